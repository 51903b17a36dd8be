package org.steelyard.spark;

import java.io.IOException;
import java.util.List;
import org.steelyard.report.file.FileSum;
import org.steelyard.report.file.OutputList;

/** What this program wrote into a folder before, on any file system. */
final class Earlier {

    private final Store store;
    private final String folder;
    private final OutputList list;

    private Earlier(Store store, String folder, OutputList list) {
        this.store = store;
        this.folder = folder;
        this.list = list;
    }

    /** Reads the lists of a folder; where there is none, nothing was written. */
    static Earlier in(Store store, String folder) throws IOException {
        try (Scratch scratch = new Scratch()) {
            for (String name : OutputList.names()) {
                String address = Store.child(folder, name);
                if (store.isFile(address) && store.bytes(address) <= OutputList.LONGEST_BYTES) {
                    store.fetch(address, store.bytes(address), scratch.folder().resolve(name));
                }
            }
            return new Earlier(store, folder, OutputList.in(scratch.folder()));
        }
    }

    /** Whether a name is listed, or that of a list or of a folder of listed files. */
    boolean names(String name) {
        return list.names(name);
    }

    /** What a file is listed with. */
    List<FileSum> sums(String name) {
        return list.sums(name);
    }

    /** Whether a file is as it is listed, or a list. */
    boolean holds(String name) throws IOException {
        return list.isWhole(name) || store.isOneOf(Store.child(folder, name), list.sums(name));
    }
}
