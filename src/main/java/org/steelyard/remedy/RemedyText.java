package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.steelyard.balance.FuelBalance;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.Remedy;
import org.steelyard.check.result.RemedyMeans;
import org.steelyard.check.text.FindingText;
import org.steelyard.check.text.Rounded;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;
import org.steelyard.remedy.RemedyStep.Action;

/** Remedies in sentences, in the units of the type's users. */
final class RemedyText {

    private static final int MOST_DECIMALS = 3;
    private static final double WHOLE = 1e-5;

    private final Trial before;
    private final Optional<Manifest> manifest;
    private final Policy policy;
    private final AircraftType type;

    RemedyText(Trial before, Optional<Manifest> manifest, Policy policy) {
        this.before = before;
        this.manifest = manifest;
        this.policy = policy;
        this.type = before.loading().type();
    }

    /** As {@code move 420 kg from hold 4 to hold 1: take-off CG 38.90 → 36.40 % MAC}. */
    String load(List<RemedyStep> steps, Trial after) {
        Map<String, List<String>> actions = new LinkedHashMap<>();
        for (Action action : List.of(Action.LEAVE, Action.BALLAST, Action.MOVE)) {
            for (RemedyStep step : steps) {
                if (step.action() == action) {
                    actions.computeIfAbsent(way(step), way -> new ArrayList<>()).add(amount(step));
                }
            }
        }
        List<String> parts = new ArrayList<>();
        String verbBefore = "";
        for (Map.Entry<String, List<String>> action : actions.entrySet()) {
            String verb = action.getKey().substring(0, action.getKey().indexOf('|'));
            String rest = action.getKey().substring(action.getKey().indexOf('|') + 1);
            String what = and(action.getValue()) + rest;
            parts.add(verb.equals(verbBefore) ? what : verb + " " + what);
            verbBefore = verb;
        }
        return and(parts) + effect(after) + stays(after);
    }

    private String way(RemedyStep step) {
        return switch (step.action()) {
            case MOVE -> "move| from " + name(step.from()) + " to " + name(step.to());
            case LEAVE -> "leave behind| from " + name(step.from());
            case BALLAST -> "put| of ballast into " + name(step.to());
        };
    }

    private String name(int place) {
        return manifest.orElseThrow().places().get(place).name();
    }

    private String amount(RemedyStep step) {
        return switch (step.kind()) {
            case LOOSE -> mass(step.massKg());
            case PASSENGER_MASS -> mass(step.massKg()) + " of passengers";
            default -> step.kind().words(Math.round(step.amount()));
        };
    }

    /** What is needed: with as many decimals as it has, the last of three rounded up. */
    private String mass(double massKg) {
        MassUnit unit = type.geometry().units().mass();
        MassUnit shown = unit == MassUnit.TONNE ? MassUnit.KG : unit;
        double amount = shown.fromKg(massKg);
        int decimals = 0;
        double grains = 1;
        while (decimals < MOST_DECIMALS && Math.abs(amount * grains - Math.rint(amount * grains)) > WHOLE) {
            decimals++;
            grains *= 10;
        }
        return Rounded.upTo(amount, decimals) + " " + shown.symbol();
    }

    private static String and(List<String> parts) {
        int last = parts.size() - 1;
        return last < 1
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    /** As {@code take 3000 kg less fuel (centre tank 0 kg), which leaves 2400 kg on landing: landing mass …}. */
    Remedy fuel(FuelSearch.Found found) {
        double changeKg = found.changeKg();
        boolean anew = found.way() == FuelSearch.Way.FILLED_ANEW;
        String what = changeKg == 0
                ? "fill the same fuel in the type's order"
                : "take " + mass(Math.abs(changeKg)) + (changeKg > 0 ? " more fuel" : " less fuel")
                        + (anew ? ", filled in the type's order" : "");
        return new Remedy(
                RemedyMeans.FUEL,
                changeKg == 0 ? pumpedKg(found.after()) : Math.abs(changeKg),
                what + tanks(found.after()) + landing(found) + effect(found.after()) + stays(found.after()),
                Optional.of(found.after().loading()),
                false,
                Optional.empty());
    }

    private String landing(FuelSearch.Found found) {
        if (found.changeKg() == 0) {
            return "";
        }
        if (found.changeKg() > 0) {
            return " and land with it";
        }
        double grainKg = RemedySearch.grainKg(before.loading());
        double leftKg = Math.floor(fuel(found.after()).landingKg().sum() / grainKg + 1e-6) * grainKg;
        boolean asked = policy.remedyFuelReservePercent() > 0;
        return ", which leaves " + mass(leftKg) + " on landing" + (asked ? "" : ", if that is reserve enough");
    }

    private static FuelBalance fuel(Trial trial) {
        return trial.balance().fuel().orElseThrow();
    }

    private double pumpedKg(Trial after) {
        double pumpedKg = 0;
        for (int i = 0; i < fuel(after).rampKg().size(); i++) {
            pumpedKg += Math.max(
                    0, fuel(after).rampKg().at(i) - fuel(before).rampKg().at(i));
        }
        return pumpedKg;
    }

    /** What is in the tanks that hold something else than before; nothing of a total, which is shared out anyway. */
    private String tanks(Trial after) {
        List<String> tanks = new ArrayList<>();
        Amounts nowKg = fuel(after).rampKg();
        for (int i = 0; i < nowKg.size() && after.loading().fuel() instanceof Fuel.ByTank; i++) {
            double beforeKg = fuel(before).rampKg().at(i);
            if (!Tolerance.isWithinKg(nowKg.at(i), beforeKg, beforeKg)) {
                tanks.add(type.fuel().tanks().get(i).name() + " " + mass(nowKg.at(i)));
            }
        }
        return tanks.isEmpty() ? "" : " (" + String.join(", ", tanks) + ")";
    }

    private String enough() {
        return policy.remedyFuelReservePercent() > 0 ? " that leaves its reserve" : "";
    }

    /** Why neither load nor fuel helps. */
    String whyNone() {
        if (before.loading().load() instanceof Load.ZeroFuelGiven) {
            return "what makes up the zero-fuel state is not known, and no other amount of fuel" + enough() + " helps";
        }
        double loadKg = manifest.orElseThrow().places().stream()
                .mapToDouble(Place::massKg)
                .sum();
        Allowance allowance = Allowance.of(before.loading(), before.balance(), 0);
        if (Tolerance.isBelowKg(allowance.mostKg(), -loadKg)) {
            return "it is too heavy even without any load";
        }
        return "neither moving or leaving load, nor ballast in the holds, nor another amount of fuel" + enough()
                + " brings every state inside";
    }

    private String stays(Trial after) {
        String others = after.otherBreaches().stream()
                .filter(code -> code != FindingCode.TRIM_RECORDED)
                .map(code -> FindingText.kind(code, Severity.BREACH).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
        return others.isEmpty() ? "" : "; this does not change: " + others;
    }

    /** What it does to the first breach of CG, or else to the first breach. */
    private String effect(Trial after) {
        List<Finding> curable =
                before.assessment().findings().stream().filter(Trial::isCurable).toList();
        Finding worst = curable.stream()
                .filter(finding -> finding.code() == FindingCode.CG_AFT || finding.code() == FindingCode.CG_FORWARD)
                .findFirst()
                .orElse(curable.get(0));
        return switch (worst.code()) {
            case CG_AFT, CG_FORWARD -> cg(worst, after);
            case TRIM_BAND, TRIM_OFF_SCALE -> cg(worst.phase(), before, after);
            case MASS_HIGH, MASS_LOW, MASS_OFF_ENVELOPE -> mass(worst.phase(), after);
            case HOLD_MASS, FLOOR_RUNNING, FLOOR_AREA -> hold(worst, after);
            default -> "";
        };
    }

    private String cg(Finding worst, Trial after) {
        if (worst.phase() != Phase.FLIGHT) {
            return cg(worst.phase(), before, after);
        }
        OptionalDouble nearest = after.assessment().margins().stream()
                .filter(margin -> margin.phase() == Phase.FLIGHT)
                .mapToDouble(margin -> cgPercentMac(at(margin, worst)))
                .findFirst();
        return nearest.isEmpty() ? "" : cg(Phase.FLIGHT, worst.value(), nearest.getAsDouble());
    }

    private static MassMoment at(EnvelopeMargin margin, Finding worst) {
        return worst.code() == FindingCode.CG_AFT ? margin.aftAt() : margin.forwardAt();
    }

    private String cg(Phase phase, Trial from, Trial to) {
        Optional<MassMoment> one = from.balance().state(phase);
        Optional<MassMoment> other = to.balance().state(phase);
        return one.isEmpty() || other.isEmpty() ? "" : cg(phase, cgPercentMac(one.get()), cgPercentMac(other.get()));
    }

    private double cgPercentMac(MassMoment state) {
        return type.geometry().chord().percentAt(state.armM());
    }

    private String cg(Phase phase, double fromPercentMac, double toPercentMac) {
        boolean arm = type.geometry().units().cg() == CgForm.ARM;
        String format = "%." + FindingText.decimals(Quantity.CG, type) + "f";
        return ": " + phase.label() + " CG "
                + String.format(
                        Locale.ROOT,
                        format + " → " + format + " %s",
                        arm ? arm(fromPercentMac) : fromPercentMac,
                        arm ? arm(toPercentMac) : toPercentMac,
                        FindingText.unit(Quantity.CG, type));
    }

    private double arm(double percentMac) {
        return type.geometry().units().length().fromM(type.geometry().chord().armAt(percentMac));
    }

    private String mass(Phase phase, Trial after) {
        Phase state = phase == Phase.FLIGHT ? Phase.TAKEOFF : phase;
        Optional<MassMoment> one = before.balance().state(state);
        Optional<MassMoment> other = after.balance().state(state);
        return one.isEmpty() || other.isEmpty()
                ? ""
                : ": " + state.label() + " mass "
                        + fromTo(one.get().massKg(), other.get().massKg());
    }

    private String hold(Finding worst, Trial after) {
        for (int i = 0; i < type.holds().size(); i++) {
            String name = type.holds().get(i).name();
            if (worst.subject().equals(name) || worst.subject().equals(name + " floor")) {
                return ": " + name + " "
                        + fromTo(
                                before.balance()
                                        .distribution()
                                        .orElseThrow()
                                        .holdKg()
                                        .at(i),
                                after.balance()
                                        .distribution()
                                        .orElseThrow()
                                        .holdKg()
                                        .at(i));
            }
        }
        return "";
    }

    private String fromTo(double fromKg, double toKg) {
        MassUnit unit = type.geometry().units().mass();
        String format = "%." + FindingText.decimals(Quantity.MASS, type) + "f";
        return String.format(
                Locale.ROOT, format + " → " + format + " %s", unit.fromKg(fromKg), unit.fromKg(toKg), unit.symbol());
    }
}
