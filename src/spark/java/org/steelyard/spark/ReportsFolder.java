package org.steelyard.spark;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.FileSum;
import org.steelyard.spark.merge.MergedReports;
import org.steelyard.report.file.OutputList;
import org.steelyard.report.file.StagedFolder;

/**
 * The folder of a season's reports on any file system, under the rules of the audit on one machine: it is apart from
 * the inputs, what this program did not write is not written over, and what an earlier run wrote goes. On a file system
 * of this machine only one run at a time writes into it.
 */
final class ReportsFolder implements Closeable {

    private static final String RUN = "run.json";

    private final Store store;
    private final String address;
    private final boolean force;
    private final List<SeasonFile> inputs;
    private final Optional<StagedFolder> alone;
    private final String staging;
    private final Earlier earlier;
    private final Set<String> foreign = new HashSet<>();

    /** Says which of some files are not as they are listed, of many files at a time. */
    interface Changed {
        List<String> of(SortedMap<String, List<FileSum>> files);
    }

    private ReportsFolder(
            Store store,
            String address,
            boolean force,
            List<SeasonFile> inputs,
            Optional<StagedFolder> alone,
            String staging)
            throws IOException {
        this.store = store;
        this.address = address;
        this.force = force;
        this.inputs = inputs;
        this.alone = alone;
        this.staging = staging;
        earlier = Earlier.in(store, address);
    }

    /**
     * Prepares the writing of a season's reports.
     *
     * @param store where files are
     * @param request what is audited
     * @param inputs the files that are read
     * @param changed looks at files of an earlier run
     * @return the folder
     * @throws IOException if the reports must not, or cannot, be written there
     */
    static ReportsFolder open(Store store, SparkRequest request, List<SeasonFile> inputs, Changed changed)
            throws IOException {
        String address = Store.child(request.reports(), request.name());
        requireApart(store, request.season(), address);
        Optional<Path> here = store.local(address);
        Optional<StagedFolder> alone = here.isPresent()
                ? Optional.of(StagedFolder.at(new Destination(here.get(), paths(store, inputs), request.force())))
                : Optional.empty();
        String staging = alone.isPresent()
                ? Store.address(alone.get().scratch("parts"))
                : Store.child(request.reports(), ".writing-" + UUID.randomUUID());
        try {
            ReportsFolder folder = new ReportsFolder(store, address, request.force(), inputs, alone, staging);
            folder.requireMayWrite(changed);
            return folder;
        } catch (IOException | RuntimeException e) {
            if (alone.isPresent()) {
                alone.get().close();
            }
            throw e;
        }
    }

    private static List<Path> paths(Store store, List<SeasonFile> inputs) throws IOException {
        List<Path> paths = new ArrayList<>();
        for (SeasonFile input : inputs) {
            store.local(input.address()).ifPresent(paths::add);
        }
        return paths;
    }

    private static void requireApart(Store store, String season, String address) throws IOException {
        Optional<Path> inputsHere = store.local(season);
        Optional<Path> outputsHere = store.local(address);
        if (inputsHere.isPresent() && outputsHere.isPresent()) {
            Destination.of(outputsHere.get()).requireApartFrom(inputsHere.get());
        } else if (store.areTogether(season, address)) {
            boolean isFolder = store.isFolder(season);
            Path inputs = Store.inItsSystem(season);
            Optional<String> reason = Destination.whyNotApart(
                    Store.inItsSystem(address), isFolder ? inputs : inputs.resolveSibling(""), isFolder);
            if (reason.isPresent() && !isOursAlone(store, address)) {
                throw new FileSystemException(address, null, reason.get());
            }
        }
    }

    private static boolean isOursAlone(Store store, String address) throws IOException {
        if (!store.exists(address)) {
            return true;
        }
        Earlier earlier = Earlier.in(store, address);
        return store.isFolder(address)
                && store.list(address).stream()
                        .map(entry -> entry.getPath().getName())
                        .filter(name -> !name.startsWith("."))
                        .allMatch(earlier::names);
    }

    private void requireMayWrite(Changed changed) throws IOException {
        for (String name : MergedReports.files()) {
            if (alone.isPresent()) {
                alone.get().file(name);
            } else {
                requireMayWrite(name);
            }
        }
        SortedMap<String, List<FileSum>> parts = new TreeMap<>();
        for (String name : MergedReports.folders()) {
            requireFolder(name);
            for (String part : store.filesIn(Store.child(address, name))) {
                parts.put(Store.child(address, name + "/" + part), earlier.sums(name + "/" + part));
            }
        }
        foreign.addAll(changed.of(parts));
        if (!force && !foreign.isEmpty()) {
            throw Destination.isForeign(foreign.stream().sorted().toList().get(0));
        }
    }

    /** What {@link StagedFolder#file} refuses, on other file systems. */
    private void requireMayWrite(String name) throws IOException {
        String file = Store.child(address, name);
        if (store.isFolder(file)) {
            throw new FileSystemException(file, null, "a folder stands where the file is to be; move it away");
        }
        if (force || !store.exists(file)) {
            return;
        }
        for (SeasonFile input : inputs) {
            if (store.areTheSame(input.address(), file)) {
                throw Destination.isRead(file);
            }
        }
        if (!earlier.holds(name)) {
            throw Destination.isForeign(file);
        }
    }

    private void requireFolder(String name) throws IOException {
        String folder = Store.child(address, name);
        if (store.local(folder).filter(Files::isSymbolicLink).isPresent()) {
            throw new FileSystemException(folder, null, "a link stands where a folder is needed; move it away");
        }
        if (store.isFile(folder)) {
            throw new FileSystemException(folder, null, "a file stands where a folder is needed; move it away");
        }
    }

    /** Address of a folder for what is not in its place yet; it is gone at the end. */
    String staging() {
        return staging;
    }

    /**
     * Puts everything in its place: the parts that workers wrote, then the files that are written whole. A list of all is
     * there before anything is moved, and beside the one of the earlier run, so that a run that is killed on the way leaves
     * nothing that the next would not know as ours.
     *
     * @param written the parts
     * @param whole a folder on this machine with the other files
     * @return names of the outputs
     */
    List<String> publish(List<Part.Written> written, Path whole) throws IOException {
        List<String> names = ready(written, whole);
        List<String> former = former(names);
        String next = Store.child(address, OutputList.NEXT);
        store.put(whole.resolve(RUN), next);
        try {
            for (String name : former) {
                store.delete(Store.child(address, name));
            }
            for (String name : names) {
                store.replace(Store.child(staging, "ready/" + name), Store.child(address, name));
            }
            store.delete(next);
        } catch (IOException e) {
            throw new InputRefused("Some of the reports in " + address + " are new and some are not yet: "
                    + e.getMessage() + ". Run again, and all will be.");
        }
        return names;
    }

    private List<String> ready(List<Part.Written> written, Path whole) throws IOException {
        for (Part.Written part : written) {
            store.move(part.address(), Store.child(staging, "ready/" + part.name()));
        }
        List<String> names = new ArrayList<>();
        for (String name : MergedReports.folders()) {
            if (store.exists(Store.child(staging, "ready/" + name))) {
                names.add(name);
            }
        }
        for (String name : MergedReports.files()) {
            store.put(whole.resolve(name), Store.child(staging, "ready/" + name));
            names.add(name);
        }
        return names;
    }

    /** What an earlier run wrote here, and this one does not. */
    private List<String> former(List<String> names) throws IOException {
        List<String> former = new ArrayList<>();
        for (String name : MergedReports.former()) {
            if (earlier.holds(name)) {
                former.add(name);
            }
        }
        Stream<String> folders = MergedReports.folders().stream()
                .filter(name -> !names.contains(name))
                .filter(name -> foreign.stream().noneMatch(file -> file.startsWith(Store.child(address, name + "/"))));
        return Stream.concat(former.stream(), folders).toList();
    }

    /** Removes what is not in its place, and lets others write here. */
    @Override
    public void close() throws IOException {
        try {
            store.delete(staging);
        } finally {
            if (alone.isPresent()) {
                alone.get().close();
            }
        }
    }
}
