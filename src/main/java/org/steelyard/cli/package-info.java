/** The commands: they wire the other packages, show progress, print the summary and choose the exit code. */
package org.steelyard.cli;
