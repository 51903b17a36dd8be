package org.steelyard.spark;

import java.io.File;
import java.net.URI;
import java.nio.file.Path;
import org.apache.hadoop.fs.RawLocalFileSystem;

/** A file system that is not that of this machine, as far as anybody can tell: {@code elsewhere:///…}. */
public final class Elsewhere extends RawLocalFileSystem {

    static final String IMPLEMENTATION = "fs.elsewhere.impl";

    private static final String ADDRESS = "elsewhere:///";

    /** Made by Hadoop. */
    public Elsewhere() {}

    static String address(Path path) {
        return "elsewhere://" + path;
    }

    @Override
    public URI getUri() {
        return URI.create(ADDRESS);
    }

    @Override
    public File pathToFile(org.apache.hadoop.fs.Path path) {
        return new File(path.toUri().getPath());
    }
}
