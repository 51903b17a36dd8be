package org.steelyard.report.output.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.Quantity;
import org.steelyard.report.words.EnvelopeOutline;

/**
 * The types for the page's script: names, envelopes in kg and % MAC, and how kg and % MAC become the units of the
 * type's users (both by a factor, an arm by an offset, too).
 */
final class PageTypes {

    private static final int PRECISE = 10;
    private static final int PERCENT = 4;

    private PageTypes() {}

    static void write(JsonGenerator json, List<AircraftType> types) throws IOException {
        json.writeArrayFieldStart("types");
        for (AircraftType type : types) {
            json.writeStartObject();
            json.writeStringField("id", type.id());
            json.writeStringField("name", type.name());
            units(json, type);
            trim(json, type);
            json.writeObjectFieldStart("envelopes");
            for (Envelope envelope : type.envelopes()) {
                outline(json, envelope, type.geometry().chord());
            }
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void units(JsonGenerator json, AircraftType type) throws IOException {
        DisplayUnits units = type.geometry().units();
        MeanChord chord = type.geometry().chord();
        json.writeStringField("massUnit", units.mass().symbol());
        number(json, "massPerKg", units.mass().fromKg(1));
        json.writeNumberField("massDecimals", FindingText.decimals(Quantity.MASS, type));
        json.writeStringField("armUnit", units.length().symbol());
        number(json, "armAtZero", units.length().fromM(chord.armAt(0)));
        number(json, "armPerPercent", units.length().fromM(chord.lengthM() / 100));
        json.writeNumberField("armDecimals", decimals(units.length()));
        json.writeBooleanField("cgAsArm", units.cg() == CgForm.ARM);
    }

    private static int decimals(LengthUnit unit) {
        return switch (unit) {
            case M, FT -> 3;
            case CM, IN -> 2;
            case MM -> 0;
        };
    }

    private static void trim(JsonGenerator json, AircraftType type) throws IOException {
        List<TrimScale> takeoff = type.trimScales().stream()
                .filter(scale -> scale.phase() == Phase.TAKEOFF)
                .toList();
        TrimUnit unit = type.trimUnit(Phase.TAKEOFF).orElse(TrimUnit.UNITS);
        json.writeStringField("trimUnit", unit.symbol());
        json.writeNumberField(
                "trimSign", unit.numbering().isPlain() ? (int) unit.numbering().turned(1) : 0);
        number(
                json,
                "trimStep",
                takeoff.stream().mapToDouble(TrimScale::stepUnits).min().orElse(0));
    }

    private static void number(JsonGenerator json, String name, double number) throws IOException {
        json.writeFieldName(name);
        PageJson.number(json, number, PRECISE);
    }

    private static void outline(JsonGenerator json, Envelope envelope, MeanChord chord) throws IOException {
        json.writeArrayFieldStart(Integer.toString(PageNumbers.of(envelope.phase())));
        for (LimitPoint point : EnvelopeOutline.of(envelope)) {
            PageJson.number(json, point.massKg(), 2);
            PageJson.number(json, chord.percentAt(point.armM()), PERCENT);
        }
        json.writeEndArray();
    }
}
