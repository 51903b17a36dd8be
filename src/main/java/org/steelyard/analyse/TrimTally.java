package org.steelyard.analyse;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.analyse.FlightColumns.Setting;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.AuditedFlight;
import org.steelyard.model.Loading;
import org.steelyard.model.TrimBasis;
import org.steelyard.model.TrimScale;
import org.steelyard.model.TrimUnit;

/** Take-off trim and CG by type and flap setting, from the columns of the season. */
final class TrimTally {

    private record Scale(TrimUnit unit, boolean estimated) {

        static final Scale NONE = new Scale(TrimUnit.UNITS, false);
    }

    private final FlightColumns columns;
    private final Map<Setting, Scale> scales = new HashMap<>();

    TrimTally(FlightColumns columns) {
        this.columns = columns;
    }

    void add(AuditedFlight flight) {
        Optional<TrimResult> trim = flight.balance().takeoffTrim();
        if (trim.isPresent()) {
            Loading loading = flight.loading();
            TrimScale scale = trim.get().scale();
            Setting key = new Setting(loading.type().id(), loading.setting().flaps());
            boolean estimated = scale.basis() == TrimBasis.ESTIMATE
                    || scales.getOrDefault(key, Scale.NONE).estimated();
            scales.put(key, new Scale(scale.unit(), estimated));
        }
    }

    List<TrimGroup> groups() {
        int width = columns.settings.groups();
        Buckets cg = new Buckets(columns, Measure.TAKEOFF_CG, columns.settings::of, width);
        Buckets trim = new Buckets(columns, Measure.TAKEOFF_TRIM, columns.settings::of, width);
        List<TrimGroup> groups = new ArrayList<>();
        for (int setting : columns.settings.inOrder()) {
            Setting key = columns.settings.key(setting);
            Scale scale = scales.getOrDefault(key, Scale.NONE);
            groups.add(new TrimGroup(
                    key.typeId(),
                    key.flaps(),
                    scale.unit(),
                    spread(trim, setting),
                    spread(cg, setting).orElseThrow(),
                    cg.marginal(setting),
                    cg.breached(setting),
                    scale.estimated()));
        }
        return groups;
    }

    private static Optional<Spread> spread(Buckets buckets, int setting) {
        double[] sorted = buckets.sorted(setting);
        return sorted.length == 0 ? Optional.empty() : Optional.of(Spread.ofSorted(sorted, sorted.length));
    }
}
