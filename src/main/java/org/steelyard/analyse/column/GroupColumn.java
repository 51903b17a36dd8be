package org.steelyard.analyse.column;

import org.steelyard.check.result.AuditedFlight;

/**
 * For every flight the group to which it belongs, as the position of the group among those met so far.
 *
 * @param <K> what tells groups apart
 */
public final class GroupColumn<K> extends GroupNames<K> {

    private final CodeColumn codes = new CodeColumn();
    private boolean leftOut;

    GroupColumn(GroupKind<K> kind) {
        super(kind);
    }

    /** Takes the next flight's group. */
    void add(AuditedFlight flight) {
        if (!leftOut) {
            add(make(kind().of(flight)));
        }
    }

    /** Takes the next flight's group by its position. */
    void add(int position) {
        codes.add(position);
    }

    /** Lets go of all that is held, and takes nothing any more. */
    void leaveOut() {
        leftOut = true;
        codes.clear();
        clear();
    }

    int size() {
        return codes.size();
    }

    public int of(int flight) {
        return codes.get(flight);
    }
}
