package org.steelyard.report.output.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.balance.FuelBalance;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.text.FindingText;
import org.steelyard.check.text.Rounded;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.report.words.FlightFigures;
import org.steelyard.report.words.SeasonWords;

/**
 * One flight as the page's script reads it: an array without names, as there are thousands. In order: flight, date,
 * tail, type, from, to, flaps, status, take-off trim in units, its setting in words, landing setting in words, recorded
 * trim in words, whether load or fuel was shared out, where the row stands, states as (phase, kg, % MAC, index),
 * margins as (phase, forward, aft, both in % MAC), fuel path as (kg, % MAC), findings as (kind, sentence), how many
 * findings more there are, and columns carried along as (name, value). Tails, types and kinds of findings are numbers
 * of the names kept here.
 */
final class PageFlight {

    private static final int NAME = 60;
    private static final int SENTENCE = 300;
    private static final int FINDINGS = 20;
    private static final int EXTRAS = 8;
    private static final int PATH = 24;
    private static final int KG = 1;
    private static final int PERCENT = 3;
    private static final int INDEX = 2;

    /** A kind of finding. */
    record Kind(String code, Severity severity, String label) {}

    private final Numbered<String, AircraftType> types = new Numbered<>(AircraftType::id);
    private final Numbered<String, String> tails = new Numbered<>(tail -> tail);
    private final Numbered<Kind, Kind> kinds = new Numbered<>(kind -> kind);

    List<AircraftType> types() {
        return types.names();
    }

    List<String> tails() {
        return tails.names();
    }

    List<Kind> kinds() {
        return kinds.names();
    }

    /** Gives numbers to the names of a flight, in the order in which flights come; for one thread. */
    void meet(AuditedFlight flight) {
        tails.meet(flight.loading().tail().registration());
        types.meet(flight.loading().type());
        shown(flight).forEach(finding -> kinds.meet(kind(finding)));
    }

    private static List<Finding> shown(AuditedFlight flight) {
        List<Finding> findings = flight.assessment().findings();
        return findings.subList(0, Math.min(FINDINGS, findings.size()));
    }

    private static Kind kind(Finding finding) {
        return new Kind(
                finding.code().code(), finding.severity(), FindingText.kind(finding.code(), finding.severity()));
    }

    /** Writes a flight that was met; for any thread. */
    void write(JsonGenerator json, AuditedFlight flight) throws IOException {
        json.writeStartArray();
        ident(json, flight);
        trim(json, flight);
        PageJson.text(json, FlightFigures.assumed(flight), NAME);
        PageJson.text(json, flight.loading().origin().toString(), 2 * NAME);
        states(json, flight);
        margins(json, flight);
        path(json, flight);
        findings(json, flight);
        extras(json, flight.loading().extras());
        json.writeEndArray();
    }

    private void ident(JsonGenerator json, AuditedFlight flight) throws IOException {
        Loading loading = flight.loading();
        FlightIdent ident = loading.flight();
        PageJson.text(json, ident.flight(), NAME);
        json.writeString(ident.date().toString());
        json.writeNumber(tails.of(loading.tail().registration()));
        json.writeNumber(types.of(loading.type()));
        PageJson.text(json, ident.from(), NAME);
        PageJson.text(json, ident.to(), NAME);
        PageJson.text(json, TrimSetting.words(loading.setting().flaps(), TrimSetting.thrust(flight)), NAME);
        json.writeNumber(PageNumbers.of(flight.assessment().status()));
    }

    private static void trim(JsonGenerator json, AuditedFlight flight) throws IOException {
        PageJson.number(json, FlightFigures.trimUnits(flight.balance().takeoffTrim()), PERCENT);
        json.writeString(FlightFigures.trimSetting(flight.balance().takeoffTrim()));
        json.writeString(FlightFigures.trimSetting(flight.balance().landingTrim()));
        OptionalDouble recorded = flight.loading().recordedTrimUnits();
        json.writeString(
                recorded.isEmpty()
                        ? ""
                        : flight.balance()
                                .takeoffTrim()
                                .map(trim -> recorded(recorded.getAsDouble(), trim.scale()))
                                .orElse(SeasonWords.trim(recorded.getAsDouble(), TrimUnit.UNITS)));
    }

    private static String recorded(double units, TrimScale scale) {
        return FindingText.trim(units, Math.min(0.01, scale.stepUnits()), scale.unit());
    }

    private static void states(JsonGenerator json, AuditedFlight flight) throws IOException {
        json.writeStartArray();
        for (Phase phase : PageNumbers.PHASES) {
            if (flight.balance().state(phase).isPresent()) {
                MassMoment state = flight.balance().state(phase).get();
                json.writeNumber(PageNumbers.of(phase));
                point(json, flight.loading(), state);
                PageJson.number(json, flight.loading().type().geometry().index().indexOf(state), INDEX);
            }
        }
        json.writeEndArray();
    }

    private static void point(JsonGenerator json, Loading loading, MassMoment state) throws IOException {
        PageJson.number(json, state.massKg(), KG);
        PageJson.number(json, FlightFigures.cgPercentMac(loading, state), PERCENT);
    }

    private static void margins(JsonGenerator json, AuditedFlight flight) throws IOException {
        json.writeStartArray();
        for (EnvelopeMargin margin : flight.assessment().margins()) {
            json.writeNumber(PageNumbers.of(margin.phase()));
            PageJson.number(json, Rounded.down(margin.forwardPercentMac(), PERCENT), PERCENT);
            PageJson.number(json, Rounded.down(margin.aftPercentMac(), PERCENT), PERCENT);
        }
        json.writeEndArray();
    }

    private static void path(JsonGenerator json, AuditedFlight flight) throws IOException {
        List<MassMoment> points = flight.balance()
                .fuel()
                .map(FuelBalance::path)
                .map(path -> path.points())
                .orElse(List.of());
        json.writeStartArray();
        for (int i = 0; i < points.size(); i++) {
            if (i < PATH || i == points.size() - 1) {
                point(json, flight.loading(), points.get(i));
            }
        }
        json.writeEndArray();
    }

    private void findings(JsonGenerator json, AuditedFlight flight) throws IOException {
        AircraftType type = flight.loading().type();
        json.writeStartArray();
        for (Finding finding : shown(flight)) {
            json.writeNumber(kinds.of(kind(finding)));
            PageJson.text(json, FindingText.sentence(finding, type), SENTENCE);
        }
        json.writeEndArray();
        json.writeNumber(Math.max(0, flight.assessment().findings().size() - FINDINGS));
    }

    private static void extras(JsonGenerator json, List<Extra> extras) throws IOException {
        json.writeStartArray();
        for (Extra extra : extras.subList(0, Math.min(EXTRAS, extras.size()))) {
            PageJson.text(json, extra.name(), NAME);
            PageJson.text(json, extra.value(), NAME);
        }
        json.writeEndArray();
    }

    /** Values by the order in which they first came. */
    private static final class Numbered<K, T> {

        private final Function<T, K> key;
        private final List<T> names = new ArrayList<>();
        private final Map<K, Integer> numbers = new ConcurrentHashMap<>();

        Numbered(Function<T, K> key) {
            this.key = key;
        }

        void meet(T name) {
            if (numbers.putIfAbsent(key.apply(name), names.size()) == null) {
                names.add(name);
            }
        }

        int of(T name) {
            return numbers.get(key.apply(name));
        }

        List<T> names() {
            return Collections.unmodifiableList(names);
        }
    }
}
