package org.steelyard.report.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.trim.TrimCard;
import org.steelyard.trim.TrimCard.Band;
import org.steelyard.trim.TrimCard.Cell;

/** The words and numbers of a trim card, in the units of the type's users. */
final class TrimCardText {

    private static final String OFF_SCALE = "off";
    private static final String NOTHING = "";

    private final TrimCard card;

    TrimCardText(TrimCard card) {
        this.card = card;
    }

    String title() {
        return card.type().name();
    }

    String setting() {
        TrimScale scale = card.scale();
        String phase = scale.phase().label();
        String capital = phase.substring(0, 1).toUpperCase(Locale.ROOT) + phase.substring(1);
        return capital + " trim, flaps " + scale.flaps()
                + (scale.thrustRating().isBlank() ? "" : ", thrust " + scale.thrustRating());
    }

    /** A short name for a sheet. */
    String sheet() {
        TrimScale scale = card.scale();
        return card.type().id() + " " + scale.phase().label() + " " + scale.flaps()
                + (scale.thrustRating().isBlank() ? "" : " " + scale.thrustRating());
    }

    boolean estimated() {
        return card.scale().basis() == TrimBasis.ESTIMATE;
    }

    List<String> notes() {
        TrimScale scale = card.scale();
        List<String> notes = new ArrayList<>();
        if (estimated()) {
            notes.add("ESTIMATE from the balance of moments: not a figure of the type's documents.");
        } else if (scale.basis() == TrimBasis.EVIDENCE) {
            notes.add("Scale fitted to recorded settings: not a figure of the type's documents.");
        }
        notes.add(String.format(
                Locale.ROOT,
                "Each setting is that for the middle of its bands, %s (steps of %s), never out of the band; within its cell"
                        + " it is at most %s from the exact trim.%s",
                scale.rounding().words(),
                amount(scale.stepUnits(), scale.stepUnits()),
                amount(card.coarsenessUnits(), 0.01),
                scale.unit().numbering().isPlain() ? "" : " UP is nose-up, DN nose-down."));
        notes.add("Permitted band: " + FindingText.trim(scale.bandLowUnits(), scale.stepUnits(), scale.unit()) + " to "
                + FindingText.trim(scale.bandHighUnits(), scale.stepUnits(), scale.unit()) + ".");
        notes.add("A setting says nothing of the limits: hold mass and CG against them first. Out of limits, do not"
                + " depart as loaded.");
        if (!card.byMass()) {
            notes.add("The scale does not depend on mass: one column holds for every mass.");
        }
        return notes;
    }

    private String amount(double units, double step) {
        return FindingText.trimAmount(units, step, card.scale().unit())
                + (card.scale().unit().symbol().isEmpty() ? " units" : "");
    }

    String cgHeading() {
        DisplayUnits units = units();
        return units.cg() == CgForm.ARM ? "CG, " + units.length().symbol() : "CG, % MAC";
    }

    String massHeading() {
        String mass = card.scale().phase().label() + " mass, " + units().mass().symbol();
        return card.byMass() ? mass : "any mass";
    }

    List<String> massBands() {
        return card.byMass()
                ? card.massBands().stream()
                        .map(band -> mass(band.from()) + "–" + mass(band.to()))
                        .toList()
                : List.of("setting");
    }

    private String mass(double massKg) {
        double shown = units().mass().fromKg(massKg);
        return units().mass() == MassUnit.TONNE
                ? String.format(Locale.ROOT, "%.1f", shown)
                : String.format(Locale.ROOT, "%,.0f", shown);
    }

    String cg(Band band) {
        return cg(band.from()) + " – " + cg(band.to());
    }

    private String cg(double cgPercentMac) {
        if (units().cg() == CgForm.PERCENT_MAC) {
            return String.format(Locale.ROOT, "%.1f", cgPercentMac);
        }
        double shown = units().length().fromM(card.type().geometry().chord().armAt(cgPercentMac));
        return String.format(Locale.ROOT, units().length().fromM(1) > 10 ? "%.1f" : "%.2f", shown);
    }

    /** The inverse table, in two columns of rows of a setting and its CGs. */
    List<List<List<String>>> settings() {
        List<List<String>> rows = card.settings().stream()
                .map(band -> List.of(shown(band.settingUnits()), cgs(band.cgs())))
                .toList();
        int half = (rows.size() + 1) / 2;
        return rows.isEmpty() ? List.of() : List.of(rows.subList(0, half), rows.subList(half, rows.size()));
    }

    private String shown(double settingUnits) {
        return FindingText.trim(
                settingUnits, card.scale().stepUnits(), card.scale().unit());
    }

    private String cgs(CgRange cgs) {
        return fine(cgs.fromPercentMac()) + " – " + fine(cgs.toPercentMac());
    }

    private String fine(double cgPercentMac) {
        if (units().cg() == CgForm.PERCENT_MAC) {
            return String.format(Locale.ROOT, "%.2f", cgPercentMac);
        }
        return cg(cgPercentMac);
    }

    String cell(Cell cell) {
        return switch (cell.place()) {
            case USABLE -> shown(cell.settingUnits().orElseThrow());
            case OUTSIDE_BAND -> "(" + shown(cell.settingUnits().orElseThrow()) + ")";
            case OUTSIDE_ENVELOPE -> NOTHING;
            case OFF_SCALE -> OFF_SCALE;
        };
    }

    private DisplayUnits units() {
        return card.type().geometry().units();
    }
}
