package org.steelyard.report.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A folder whose files appear only when all of them are complete, and belong to one run. They are written into the
 * hidden folder {@value #STAGING} in it. When all are complete a list of them is put beside them ({@link MoveList}),
 * and then each is moved to its place in one step that replaces an older file whole.
 *
 * <p>A run that is killed before there is a list has changed nothing, and the next that writes here removes what it
 * left. One that is killed after that has moved some files: the next run, and whoever reads the folder back, moves the
 * others first. Only one run at a time writes into a folder.
 */
public final class StagedFolder implements Closeable {

    /** Name of the hidden folder. */
    static final String STAGING = ".writing";

    private static final String LOCK = "lock";
    private static final String ASIDE = "set-aside";
    private static final int TRIES = 50;
    private static final String NOT_IN_NAMES = "/\\<>:\"|?*";
    private static final Set<String> DEVICES = Set.of(
            "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9", "lpt1",
            "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private final Destination to;
    private final boolean inputs;
    private final Path folder;
    private final Path staging;
    private final Deque<Path> made;
    private final WritingLock lock;
    private final List<String> files = new ArrayList<>();
    private final Set<String> namesSeen = new TreeSet<>();
    private Optional<OutputList> before = Optional.empty();
    private boolean halfMoved;

    private StagedFolder(Destination to, boolean inputs, Deque<Path> made, WritingLock lock) {
        this.to = to;
        this.inputs = inputs;
        this.folder = to.path();
        this.staging = folder.resolve(STAGING);
        this.made = made;
        this.lock = lock;
    }

    /**
     * Prepares the writing of a folder that is named by data.
     *
     * @param parent the folder that it is in
     * @param name its name
     * @return the folder
     * @throws IOException if it cannot be written
     * @throws IllegalArgumentException if the name cannot be that of a folder inside the parent on every system
     */
    public static StagedFolder in(Destination parent, String name) throws IOException {
        requireName(name);
        return at(parent.at(parent.path().resolve(name)));
    }

    /**
     * Prepares the writing of a folder, which is made if it is not there.
     *
     * @param to the folder
     * @return the folder
     * @throws IOException if it cannot be written
     */
    public static StagedFolder at(Destination to) throws IOException {
        return at(to, false);
    }

    /**
     * Prepares the writing of inputs. They are read again as if somebody else had written them, so no list is made of
     * them, and only what is the same byte for byte is written over.
     *
     * @param to the folder
     * @return the folder
     * @throws IOException if it cannot be written
     */
    public static StagedFolder ofInputs(Destination to) throws IOException {
        return at(to, true);
    }

    private static StagedFolder at(Destination to, boolean inputs) throws IOException {
        Path whole = to.path().toAbsolutePath().normalize();
        for (int i = 1; ; i++) {
            try {
                return tryAt(to.at(whole), inputs);
            } catch (NoSuchFileException | FileAlreadyExistsException e) {
                if (i == TRIES) { // a run that ends removes empty folders between two steps of this one
                    throw e;
                }
            }
        }
    }

    private static StagedFolder tryAt(Destination to, boolean inputs) throws IOException {
        Path folder = to.path();
        Deque<Path> made = makeFolders(folder);
        Path staging = folder.resolve(STAGING);
        try {
            makeStaging(staging);
            StagedFolder staged = new StagedFolder(to, inputs, made, lock(folder, staging));
            staged.begin();
            return staged;
        } catch (IOException e) {
            removeMade(made, staging);
            throw e;
        }
    }

    private static void makeStaging(Path staging) throws IOException {
        if (Files.isSymbolicLink(staging)) {
            Files.deleteIfExists(staging);
        }
        if (!Files.isDirectory(staging, LinkOption.NOFOLLOW_LINKS)) {
            Files.createDirectory(staging);
        }
    }

    private static WritingLock lock(Path folder, Path staging) throws IOException {
        return WritingLock.take(staging.resolve(LOCK))
                .orElseThrow(() -> new FileSystemException(
                        folder.toString(), null, "another run is writing into it at this moment; wait until it ends"));
    }

    /** Moves what a killed run had complete, and removes what it had not. */
    private void begin() throws IOException {
        try {
            if (MoveList.isAt(staging)) {
                finishMoves(leftList());
            }
            empty();
        } catch (IOException e) {
            try (lock) {
                throw e;
            }
        }
    }

    private MoveList leftList() throws IOException {
        try {
            return MoveList.read(staging, folder);
        } catch (ForeignListException e) {
            Path aside = setAside();
            throw new FileSystemException(
                    staging.toString(),
                    null,
                    "the list of files to move there was not written by this program: " + e.why()
                            + "; nothing was moved or removed, and it lies in '" + aside
                            + "' with all that came with it; run again");
        }
    }

    /** Moves what somebody else left, but for the lock, to where nothing of ours reads it. */
    private Path setAside() throws IOException {
        Path aside = folder.resolve(ASIDE);
        for (int i = 2; Files.exists(aside, LinkOption.NOFOLLOW_LINKS); i++) {
            aside = folder.resolve(ASIDE + "-" + i);
        }
        Files.createDirectory(aside);
        try (DirectoryStream<Path> all = Files.newDirectoryStream(staging)) {
            for (Path path : all) {
                if (!path.equals(staging.resolve(LOCK))) {
                    Files.move(path, aside.resolve(path.getFileName()));
                }
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        return aside;
    }

    /**
     * Moves to its place what a run that was killed, or could not go on, had complete. Does nothing where there is
     * nothing of that kind.
     *
     * @param folder a folder of outputs that is to be read back
     * @throws IOException if a run writes into it at this moment, or the files cannot be moved
     */
    public static void putRight(Path folder) throws IOException {
        Path staging = folder.resolve(STAGING);
        if (MoveList.isAt(staging)) {
            StagedFolder.at(Destination.of(folder)).close();
        }
    }

    /**
     * Refuses a name that is not that of a folder on every system, or leads elsewhere.
     *
     * @param name the name
     * @throws IllegalArgumentException if it is refused; the message says what is expected
     */
    public static void requireName(String name) {
        boolean bad = name.isBlank()
                || name.startsWith(".")
                || name.endsWith(".")
                || name.endsWith(" ")
                || DEVICES.contains(name.toLowerCase(Locale.ROOT).replaceFirst("\\..*", ""))
                || name.chars().anyMatch(c -> Character.isISOControl(c) || NOT_IN_NAMES.indexOf(c) >= 0);
        if (bad) {
            throw new IllegalArgumentException("the name '" + name + "' cannot be that of a folder (expected a name"
                    + " without " + NOT_IN_NAMES + " that neither begins nor ends with a full stop and is not that of"
                    + " a device, as con)");
        }
    }

    /**
     * Where a file is to be written; files are moved in the order in which they are asked for.
     *
     * @param name its name, with a slash after that of a sub-folder
     * @return where to write it for now
     * @throws IOException if something stands in its place that cannot be replaced, or must not be
     * @throws IllegalArgumentException if the name leads out of the folder, or is that of another of its files on a
     *     system that does not tell upper from lower case
     */
    public Path file(String name) throws IOException {
        MoveList.requireGiven(name);
        if (!namesSeen.add(name.toLowerCase(Locale.ROOT))) {
            throw new IllegalArgumentException("two files are to be written as '" + name + "'");
        }
        OutputPlace.requireNoLink(folder, name);
        OutputPlace.requireFree(folder.resolve(name));
        if (!inputs) {
            to.requireMayWrite(name, before());
        }
        Path file = staging.resolve(name);
        Path parent = file.getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        files.add(name);
        return file;
    }

    /** What this program wrote here before. */
    private OutputList before() throws IOException {
        if (before.isEmpty()) {
            for (String list : OutputList.LISTS) { // without its list everything here would be a stranger's
                OutputPlace.requireFree(folder.resolve(list));
            }
            before = Optional.of(OutputList.in(folder));
        }
        return before.get();
    }

    /** Where a file of a season's reports is to be written. */
    public Path file(OutputFile file) throws IOException {
        return file(file.fileName());
    }

    /** All files of a season's reports that were asked for, in order. */
    public List<OutputFile> files() {
        return files.stream().map(OutputFile::named).toList();
    }

    /**
     * Where something may wait that is not to stay.
     *
     * @param name its name
     * @return a file or folder that is gone when this one is closed
     */
    public Path scratch(String name) {
        return staging.resolve(name);
    }

    /**
     * Moves all files to their place.
     *
     * @throws IOException if that fails: a {@link HalfMovedException} if some were moved, else all is as it was
     */
    public void publish() throws IOException {
        publish(List.of());
    }

    /**
     * Moves all files to their place and removes those of an earlier run that this one does not write, as long as they
     * are as that run left them. Where no file lists the others, a list of all is written ({@link OutputList}).
     *
     * @param former names of files that would be of an earlier run
     * @throws IOException if that fails: a {@link HalfMovedException} if some were moved, else all is as it was
     */
    public void publish(Collection<String> former) throws IOException {
        List<String> gone = new ArrayList<>();
        for (String name : former) {
            if (!namesSeen.contains(name.toLowerCase(Locale.ROOT))) {
                OutputPlace.requireNoLink(folder, name);
                if (Files.isDirectory(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                    gone.addAll(parts(name));
                } else if (before().wrote(name)) {
                    gone.add(name);
                }
            }
        }
        list(gone);
        for (String name : files) {
            OutputPlace.requireNoLink(folder, name);
            OutputPlace.requireFree(folder.resolve(name));
            OutputPlace.settle(staging.resolve(name));
        }
        requireStillAlone();
        MoveList list = new MoveList(files, gone);
        list.write(staging);
        finishMoves(list);
    }

    /** The parts of an output that an earlier run wrote in parts. */
    private List<String> parts(String name) throws IOException {
        List<String> parts = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder.resolve(name))) {
            for (Path file : all) {
                String part = name + "/" + file.getFileName();
                if (!MoveList.isPart(part) || !before().holds(part)) {
                    throw new FileSystemException(
                            file.toString(),
                            null,
                            "in a folder of an earlier run in parts, this program did not write the file there, or it was"
                                    + " changed since; move the folder away");
                }
                parts.add(part);
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        return parts;
    }

    private void requireStillAlone() throws IOException {
        if (!lock.isHeld()) {
            throw new FileSystemException(
                    folder.toString(), null, "its lock was removed meanwhile, and another run may be writing into it");
        }
    }

    private void list(List<String> gone) throws IOException {
        if (inputs) {
            for (String name : files) {
                to.requireSame(name, staging.resolve(name));
            }
            return;
        }
        if (files.contains(OutputFile.RUN.fileName())) {
            return;
        }
        Map<String, FileSum> sums = new LinkedHashMap<>();
        for (String name : files) {
            sums.put(name, FileSum.of(staging.resolve(name)));
        }
        String text = before().with(sums, gone);
        Files.writeString(file(OutputList.NAME), text, StandardCharsets.UTF_8);
    }

    private void finishMoves(MoveList list) throws IOException {
        halfMoved = true;
        try {
            list.moveAll(staging, folder);
        } catch (IOException e) {
            throw new HalfMovedException(folder, e);
        }
        halfMoved = false;
    }

    /** Removes what is left of the hidden folder, unless there are complete files in it that could not be moved. */
    @Override
    public void close() throws IOException {
        try (lock) {
            if (!halfMoved) {
                empty();
            }
        }
        if (!halfMoved) {
            removeMade(made, staging);
        }
    }

    /** Removes all that is in the hidden folder but the lock; goes on where something cannot be removed. */
    private void empty() throws IOException {
        Path kept = staging.resolve(LOCK);
        List<IOException> failed = new ArrayList<>();
        Files.walkFileTree(staging, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (!file.equals(kept)) {
                    remove(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path dir, IOException e) {
                if (!dir.equals(staging)) {
                    remove(dir);
                }
                return FileVisitResult.CONTINUE;
            }

            private void remove(Path path) {
                try {
                    Files.deleteIfExists(path);
                } catch (IOException e) {
                    failed.add(e);
                }
            }
        });
        if (!failed.isEmpty()) {
            throw failed.get(0);
        }
    }

    private static Deque<Path> makeFolders(Path folder) throws IOException {
        if (Files.isSymbolicLink(folder)) {
            throw OutputPlace.linked(folder);
        }
        Deque<Path> made = new ArrayDeque<>();
        for (Path path = folder; path != null && !Files.exists(path); path = path.getParent()) {
            made.addLast(path);
        }
        Files.createDirectories(folder);
        return made;
    }

    /** Removes the hidden folder and those that were made for it, as long as they are empty. */
    private static void removeMade(Deque<Path> made, Path staging) throws IOException {
        try {
            Files.deleteIfExists(staging);
            for (Path path : made) {
                Files.delete(path);
            }
        } catch (DirectoryNotEmptyException | NoSuchFileException e) {
            return; // in use, or gone already
        }
    }
}
