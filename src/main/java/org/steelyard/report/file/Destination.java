package org.steelyard.report.file;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a command writes, and what it must not write over: the files that it reads, and files that this program did not
 * write or that were changed since, unless it is forced.
 *
 * @param path folder or file that is written
 * @param read files that the command reads
 * @param force whether it may write over anything
 */
public record Destination(Path path, Collection<Path> read, boolean force) {

    private static final String FORCE = "; move it away, write elsewhere, or give --force if it may be lost";

    public Destination {
        read = List.copyOf(read);
    }

    /**
     * A place to write what was made of nothing but the configuration.
     *
     * @param path folder or file
     * @return the place, without force
     */
    public static Destination of(Path path) {
        return new Destination(path, List.of(), false);
    }

    /**
     * Another place under the same rules.
     *
     * @param other folder or file
     * @return the place
     */
    public Destination at(Path other) {
        return new Destination(other, read, force);
    }

    /**
     * Refuses a folder of outputs that is, holds or lies in the folder of the inputs, unless it is empty or holds
     * nothing but outputs of this program.
     *
     * @param season folder or file of the inputs
     * @throws IOException if it is refused, with a proposal
     */
    public void requireApartFrom(Path season) throws IOException {
        boolean isFolder = Files.isDirectory(season);
        Path inputs = real(isFolder ? season : season.toAbsolutePath().resolveSibling("."));
        Path outputs = real(path);
        Optional<String> reason = whyNotApart(outputs, inputs, isFolder);
        if (reason.isPresent() && !isOursAlone(outputs)) {
            throw new FileSystemException(path.toString(), null, reason.get());
        }
    }

    /**
     * Why a folder of outputs is refused unless it is empty or holds nothing but outputs of this program.
     *
     * @param outputs where the outputs go
     * @param inputs the folder of the inputs, or that of their only file
     * @param whole whether all of that folder is read
     * @return the reason, with a proposal; empty if they are apart
     */
    public static Optional<String> whyNotApart(Path outputs, Path inputs, boolean whole) {
        Optional<String> how = Optional.empty();
        if (outputs.equals(inputs)) {
            how = Optional.of("is");
        } else if (whole && inputs.startsWith(outputs)) {
            how = Optional.of("holds");
        } else if (whole && outputs.startsWith(inputs)) {
            how = Optional.of("lies in");
        }
        return how.map(word -> "it " + word + " the folder of the inputs; choose another place with -o, as -o reports,"
                + " or another name with --name");
    }

    /**
     * Why a file is not written over that the command reads.
     *
     * @param file the file
     * @return the refusal
     */
    public static FileSystemException isRead(String file) {
        return new FileSystemException(file, null, "the file there is read by this command" + FORCE);
    }

    /**
     * Why a file is not written over that this program did not write.
     *
     * @param file the file
     * @return the refusal
     */
    public static FileSystemException isForeign(String file) {
        return new FileSystemException(
                file, null, "this program did not write the file there, or it was changed since" + FORCE);
    }

    /** Whether a folder is not there, empty, or holds only what this program wrote. */
    private static boolean isOursAlone(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return !Files.exists(folder);
        }
        OutputList list = OutputList.in(folder);
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> String.valueOf(path.getFileName()))
                    .filter(name -> !name.startsWith("."))
                    .allMatch(list::names);
        }
    }

    /** A path as the system sees it, links followed as far as it is there. */
    private static Path real(Path path) throws IOException {
        Path whole = path.toAbsolutePath().normalize();
        for (Path there = whole; there != null; there = there.getParent()) {
            if (Files.exists(there)) {
                return there.toRealPath().resolve(there.relativize(whole)).normalize();
            }
        }
        return whole;
    }

    /** Refuses the place of a single file. */
    public void requireMayWrite() throws IOException {
        Path file = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
        if (Files.isRegularFile(file)) {
            requireMayWrite(file, OutputMark.isOn(file) || isListed(file));
        }
    }

    private static boolean isListed(Path file) {
        return OutputList.isIn(file.resolveSibling("")).test(file);
    }

    /** Refuses the place of a file of a folder. */
    void requireMayWrite(String name, OutputList before) throws IOException {
        Path file = path.resolve(name);
        if (Files.isRegularFile(file)) {
            requireMayWrite(file, before.wrote(name));
        }
    }

    /** Refuses the place of a file of a folder unless what is there is the same. */
    void requireSame(String name, Path written) throws IOException {
        Path file = path.resolve(name);
        if (Files.isRegularFile(file)) {
            requireMayWrite(file, Files.mismatch(file, written) < 0);
        }
    }

    private void requireMayWrite(Path file, boolean isOurs) throws IOException {
        if (force) {
            return;
        }
        for (Path input : read) {
            if (Files.exists(input) && Files.isSameFile(input, file)) {
                throw isRead(file.toString());
            }
        }
        if (!isOurs) {
            throw isForeign(file.toString());
        }
    }
}
