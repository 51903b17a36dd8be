package org.steelyard.run;

/** Hears how an audit gets on. Called by the thread that runs the audit. */
public interface Progress {

    /** Hears nothing. */
    Progress SILENT = new Progress() {};

    /**
     * A file is being read.
     *
     * @param name its name
     * @param number its place among the files, from 1
     * @param files how many files there are
     */
    default void file(String name, int number, int files) {}

    /**
     * Rows are done.
     *
     * @param seen rows of all files so far
     */
    default void rows(long seen) {}

    /** All rows are done; the reports are being finished. */
    default void finishing() {}
}
