package org.steelyard.report.type;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.steelyard.check.curtail.Contribution;
import org.steelyard.check.curtail.CurtailedEnvelope;
import org.steelyard.check.curtail.CurtailedPoint;
import org.steelyard.check.text.FindingText;
import org.steelyard.check.text.Rounded;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.Quantity;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.WholeFile;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageShell;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.text.Caution;
import org.steelyard.report.text.NumberText;

/** Operational envelopes of a type as a page: for each phase a picture and a table of what takes off how much. */
public final class OperationalEnvelopePage {

    private static final double INCH_M = 0.0254;

    private final AircraftType type;
    private final Html html;

    private OperationalEnvelopePage(AircraftType type) {
        this.type = type;
        this.html = PageShell.begin("Operational envelope: " + type.name(), "print.css");
    }

    /**
     * Writes the page.
     *
     * @param type the type
     * @param envelopes its envelopes, certified and operational
     * @param notes how they were made, in sentences
     * @param to where to
     * @param version version of the program
     * @throws IOException if it cannot be written
     */
    public static void write(
            AircraftType type, List<CurtailedEnvelope> envelopes, List<String> notes, Destination to, String version)
            throws IOException {
        OperationalEnvelopePage page = new OperationalEnvelopePage(type);
        page.content(envelopes, notes);
        page.html.element("footer", "Steelyard " + version + ". " + Caution.TEXT);
        String text = PageShell.end(page.html);
        WholeFile.write(to, text);
    }

    private void content(List<CurtailedEnvelope> envelopes, List<String> notes) {
        html.element("p", "Operational envelope", "class", "kind");
        html.open("h1").data(type.name()).close();
        html.element("p", Caution.TEXT, "class", "caution");
        notes.forEach(note -> html.element("p", note, "class", "hint"));
        for (CurtailedEnvelope envelope : envelopes) {
            html.open("section", "class", "card curtailed");
            html.element("h2", capital(envelope.certified().phase().label()));
            html.open("figure", "class", "operational");
            new OperationalPicture(envelope, type).draw(html);
            html.element("figcaption", "Dashed: as certified. Filled: operational.")
                    .closeBlock();
            table("Forward limit", envelope.forward(), Rounded::up);
            table("Aft limit", envelope.aft(), Rounded::down);
            html.closeBlock();
        }
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** The operational limit is rounded inwards, as it is what is permitted. */
    private void table(String name, List<CurtailedPoint> points, Inwards inwards) {
        DisplayUnits units = type.geometry().units();
        String[] headings = Stream.concat(
                        Stream.of(name + " at mass, " + units.mass().symbol()),
                        points.stream()
                                .map(point -> "#"
                                        + NumberText.fixed(
                                                units.mass()
                                                        .fromKg(point.certified()
                                                                .massKg()),
                                                massDecimals())))
                .toArray(String[]::new);
        ScrolledTables.open(html, name, "", headings);
        String cgUnit = FindingText.unit(Quantity.CG, type);
        row("certified, " + cgUnit, points, point -> cg(point.certified(), (shown, decimals) -> shown));
        row("operational, " + cgUnit, points, point -> cg(point.operational(), inwards));
        List<Contribution> causes = points.get(0).contributions();
        for (int i = 0; i < causes.size(); i++) {
            String cause = causes.get(i).cause();
            String by = causes.get(i).byChance() ? " (by chance)" : "";
            row(
                    cause + by + ", " + momentUnit(),
                    points,
                    point -> moment(point.contributions().stream()
                            .filter(contribution -> contribution.cause().equals(cause))
                            .mapToDouble(Contribution::kgM)
                            .sum()));
        }
        row("together, " + momentUnit(), points, point -> moment(point.totalKgM()));
        row("taken off, " + momentUnit(), points, point -> moment(point.takenKgM()));
        ScrolledTables.close(html);
    }

    private int massDecimals() {
        return FindingText.decimals(Quantity.MASS, type);
    }

    private void row(String title, List<CurtailedPoint> points, Function<CurtailedPoint, String> value) {
        html.open("tr").element("th", title, "scope", "row");
        ScrolledTables.numbers(html, points.stream().map(value).toArray(String[]::new));
        html.closeBlock();
    }

    private interface Inwards {
        double of(double shown, int decimals);
    }

    private String cg(LimitPoint point, Inwards inwards) {
        DisplayUnits units = type.geometry().units();
        double shown = units.cg() == CgForm.ARM
                ? units.length().fromM(point.armM())
                : type.geometry().chord().percentAt(point.armM());
        int decimals = FindingText.decimals(Quantity.CG, type);
        return NumberText.fixed(inwards.of(shown, decimals), decimals);
    }

    private boolean pounds() {
        return type.geometry().units().mass() == MassUnit.LB;
    }

    private String momentUnit() {
        return pounds() ? "lb in" : "kg m";
    }

    private String moment(double kgM) {
        return NumberText.fixed(pounds() ? MassUnit.LB.fromKg(kgM) / INCH_M : kgM, 0);
    }
}
