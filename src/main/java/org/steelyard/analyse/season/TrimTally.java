package org.steelyard.analyse.season;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.Grouped;
import org.steelyard.analyse.column.SeasonFigures;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimUnit;

/** Take-off trim and CG by type, flap setting and thrust rating of a scale, from the figures of the season. */
public final class TrimTally implements Serializable {

    private static final long serialVersionUID = 1;

    private record Scale(TrimUnit.Measure measure, TrimUnit.Numbering numbering, boolean estimated)
            implements Serializable {

        static final Scale NONE = of(TrimUnit.UNITS, false);

        static Scale of(TrimUnit unit, boolean estimated) {
            return new Scale(unit.measure(), unit.numbering(), estimated);
        }

        TrimUnit unit() {
            return new TrimUnit(measure, numbering);
        }
    }

    private final Map<TrimSetting, Scale> scales = new HashMap<>();

    void add(AuditedFlight flight) {
        Optional<TrimResult> trim = flight.balance().takeoffTrim();
        if (trim.isPresent()) {
            TrimScale scale = trim.get().scale();
            TrimSetting key = TrimSetting.of(flight);
            boolean estimated = scale.basis() == TrimBasis.ESTIMATE
                    || scales.getOrDefault(key, Scale.NONE).estimated();
            scales.put(key, Scale.of(scale.unit(), estimated));
        }
    }

    /** Adds the scales that another has seen. */
    void merge(TrimTally other) {
        other.scales.forEach((key, scale) ->
                scales.merge(key, scale, (one, two) -> Scale.of(two.unit(), one.estimated() || two.estimated())));
    }

    public List<TrimGroup> groups(SeasonFigures figures) {
        Grouped cg = figures.bySetting(Measure.TAKEOFF_CG);
        List<Optional<Spread>> ofCg = spreads(cg, figures.settings());
        List<Optional<Spread>> ofTrim = spreads(figures.bySetting(Measure.TAKEOFF_TRIM), figures.settings());
        List<TrimGroup> groups = new ArrayList<>();
        for (int setting : figures.settings().inOrder()) {
            TrimSetting key = figures.settings().key(setting);
            Scale scale = scales.getOrDefault(key, Scale.NONE);
            groups.add(new TrimGroup(
                    key.typeId(),
                    key.flaps(),
                    key.thrust(),
                    scale.unit(),
                    ofTrim.get(setting),
                    ofCg.get(setting).orElseThrow(),
                    cg.marginal(setting),
                    cg.breached(setting),
                    scale.estimated()));
        }
        return groups;
    }

    /** The spread in each setting, by its position. */
    private static List<Optional<Spread>> spreads(Grouped groups, GroupNames<TrimSetting> settings) {
        List<Optional<Spread>> spreads = new ArrayList<>();
        for (int setting = 0; setting < settings.groups(); setting++) {
            spreads.add(
                    groups.n(setting) == 0
                            ? Optional.empty()
                            : Optional.of(groups.values(setting).spread()));
        }
        return spreads;
    }
}
