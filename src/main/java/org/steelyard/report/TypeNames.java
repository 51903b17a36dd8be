package org.steelyard.report;

/** How types are called in words. */
@FunctionalInterface
interface TypeNames {

    String of(String typeId);
}
