package org.steelyard.analyse.column;

import java.util.List;
import org.steelyard.analyse.figure.HistogramCells;
import org.steelyard.analyse.figure.Measure;

/** A season's figures put together by groups, from which its statistics are made; however they are held. */
public interface SeasonFigures {

    /** The groups of one of the kinds that every season has; none where there are too many. */
    <K> GroupNames<K> groups(GroupKind<K> kind);

    default GroupNames<String> types() {
        return groups(GroupKind.TYPE);
    }

    default GroupNames<TrimSetting> settings() {
        return groups(GroupKind.SETTING);
    }

    /** The columns that the user named. */
    List<? extends GroupNames<String>> named();

    /** Columns that the user named and no flight has. */
    List<String> missing();

    /** Groupings of too many groups, in order of name; nothing of them is held. */
    List<String> leftOut();

    /** Whether a kind of groups has too many of them: each flight is in one of each kind. */
    default boolean isLeftOut(GroupNames<?> kind) {
        return kind.groups() == 0 && types().groups() > 0;
    }

    /**
     * The known figures of one measure by group, within a type or, where the measure is by flaps, within a setting. The
     * place of a group is {@code within * groups.groups() + group}.
     */
    Grouped grouped(Measure measure, GroupNames<?> groups);

    /** The known figures of one measure by setting; a place for each of {@link #settings}. */
    Grouped bySetting(Measure measure);

    /** The known figures of one measure by type; a place for each of {@link #types}. */
    Grouped byType(Measure measure);

    /** The figures of one setting counted in cells of one width, for histograms. */
    HistogramCells cells(TrimSetting setting, Measure measure, double width);
}
