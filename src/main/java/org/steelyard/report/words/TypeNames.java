package org.steelyard.report.words;

/** How types are called in words. */
@FunctionalInterface
public interface TypeNames {

    String of(String typeId);
}
