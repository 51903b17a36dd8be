package org.steelyard.config.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steelyard.model.type.ScaleReading;
import org.steelyard.model.type.WeighingRecord;
import org.steelyard.model.unit.MassMoment;

/**
 * A weighing as it is written in a cell: entries joined by semicolons. A scale is {@code nose 1250 kg at 4.1 m}, with
 * its tare {@code nose 1262 kg less 12 kg at 4.1 m}; what was missing aboard is {@code plus oil 9 kg at 3.0 m}, what
 * was aboard and does not belong to the basic mass {@code minus fuel 85 kg at 17.9 m}.
 */
public final class WeighingText {

    private static final String MASS = "-?[0-9.]+ ?(?:kg|lb|t)";
    private static final Pattern ENTRY =
            Pattern.compile("(?:(plus|minus) )?(\\S.*?) (" + MASS + ")(?: less (" + MASS + "))? at (\\S.*)");
    private static final String EXPECTED =
            "scales as 'nose 1250 kg at 4.1 m; left 980 kg less 4 kg at 18.2 m', and after"
                    + " them 'plus' or 'minus' for what was missing or does not belong";

    private final List<ScaleReading> readings = new ArrayList<>();
    private final List<MassMoment> corrections = new ArrayList<>();

    private WeighingText() {}

    /** The record that stands in a cell; nothing in a blank one. */
    public static Optional<WeighingRecord> read(String text) throws NotAcceptedException {
        if (text.isBlank()) {
            return Optional.empty();
        }
        WeighingText weighing = new WeighingText();
        for (String entry : text.split(";", -1)) {
            weighing.add(entry.strip());
        }
        return Optional.of(weighing.record());
    }

    private void add(String entry) throws NotAcceptedException {
        Matcher parts = ENTRY.matcher(entry);
        if (!parts.matches()) {
            throw new NotAcceptedException("'" + entry + "' is no part of a weighing", EXPECTED);
        }
        double massKg = WrittenNumber.MASS_OR_NONE.read(parts.group(3));
        double tareKg = parts.group(4) == null ? 0 : WrittenNumber.MASS_OR_NONE.read(parts.group(4));
        double armM = WrittenNumber.ARM.read(parts.group(5));
        if (parts.group(1) == null) {
            readings.add(new ScaleReading(parts.group(2), massKg, tareKg, armM));
        } else {
            double netKg = massKg - tareKg;
            corrections.add(MassMoment.at(parts.group(1).equals("plus") ? netKg : -netKg, armM));
        }
    }

    private WeighingRecord record() throws NotAcceptedException {
        try {
            return new WeighingRecord(readings, corrections);
        } catch (IllegalArgumentException e) {
            throw new NotAcceptedException(e.getMessage(), EXPECTED);
        }
    }
}
