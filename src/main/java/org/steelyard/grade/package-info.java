/**
 * Marking of students' load sheets: each figure against the right one, figures that follow from an earlier slip, and
 * which slip that was. Pure: a sheet, a loading and a scheme in, marks and words out.
 */
package org.steelyard.grade;
