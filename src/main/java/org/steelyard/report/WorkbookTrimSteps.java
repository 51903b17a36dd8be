package org.steelyard.report;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.steelyard.analyse.TrimGroup;
import org.steelyard.analyse.TrimSetting;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.FindingText;

/** Remembers the step of each trim scale met, so that statistics are shown with the decimals of the scale. */
final class WorkbookTrimSteps {

    private static final double UNKNOWN_STEP = 0.1;

    private final Map<TrimSetting, Double> steps = new HashMap<>();

    void see(AuditedFlight flight) {
        Optional<TrimResult> trim = flight.balance().takeoffTrim();
        if (trim.isPresent()) {
            steps.putIfAbsent(TrimSetting.of(flight), trim.get().scale().stepUnits());
        }
    }

    /** A trim of a group as pilots say it. */
    String text(TrimGroup group, double trimUnits) {
        double step = steps.getOrDefault(group.setting(), UNKNOWN_STEP);
        return FindingText.trim(trimUnits, step, group.unit());
    }
}
