package org.steelyard.check.flight;

import java.util.Locale;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.LastMinuteRule;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Quantity;

/**
 * Says what a last-minute change did to the take-off state, and holds it against what the policy lets happen without a
 * new load sheet. That an operator sets such an amount, and makes a new sheet beyond it, is CAT.POL.MAB.105 of the EU
 * and UK rules on air operations (from memory); how much comes and goes is summed without sign here, which is ours.
 */
final class LastMinuteCheck {

    private LastMinuteCheck() {}

    static void run(Loading loading, Balance balance, Findings findings) {
        LastMinuteChange change = loading.change();
        if (change.isNone()) {
            return;
        }
        findings.policy().lastMinute().ifPresent(rule -> amounts(change, rule, findings));
        MassMoment before =
                Balancer.balance(loading.beforeChange(), findings.policy()).takeoff();
        findings.add(Finding.plain(
                FindingCode.LAST_MINUTE_EFFECT,
                Severity.NOTE,
                Phase.TAKEOFF,
                "the last-minute change " + effect(loading, before, balance.takeoff())));
    }

    private static void amounts(LastMinuteChange change, LastMinuteRule rule, Findings findings) {
        amount(
                FindingCode.LAST_MINUTE_PASSENGERS,
                "passengers",
                Quantity.PERSONS,
                change.persons(),
                rule.passengers(),
                findings);
        amount(
                FindingCode.LAST_MINUTE_MASS,
                "traffic load",
                Quantity.MASS,
                change.trafficLoadKg(),
                rule.massKg(),
                findings);
        amount(FindingCode.LAST_MINUTE_FUEL, "fuel", Quantity.MASS, change.fuelKg(), rule.fuelKg(), findings);
    }

    private static void amount(
            FindingCode code, String subject, Quantity quantity, double value, double limit, Findings findings) {
        findings.measure(
                code, Phase.TAKEOFF, () -> subject, quantity, value, limit, limit - value, Double.NEGATIVE_INFINITY);
    }

    private static String effect(Loading loading, MassMoment before, MassMoment after) {
        DisplayUnits units = loading.type().geometry().units();
        double massKg = after.massKg() - before.massKg();
        Optional<String> mass = signed(
                units.mass().fromKg(massKg),
                FindingText.decimals(Quantity.MASS, loading.type()),
                units.mass().symbol());
        double shiftM = after.armM() - before.armM();
        double shift = units.cg() == CgForm.ARM
                ? units.length().fromM(shiftM)
                : 100 * shiftM / loading.type().geometry().chord().lengthM();
        Optional<String> cg = signed(
                shift,
                FindingText.decimals(Quantity.CG, loading.type()),
                FindingText.unit(Quantity.CG, loading.type()));
        return "moved take-off mass by " + mass.orElse("nothing") + " and take-off CG by " + cg.orElse("nothing")
                + cg.map(shown -> shown.startsWith("+") ? " (aft)" : " (forward)")
                        .orElse("");
    }

    /** A figure with its sign; empty where nothing but zeros would be shown. */
    private static Optional<String> signed(double value, int decimals, String unit) {
        String digits = String.format(Locale.ROOT, "%+." + decimals + "f", value);
        boolean zero = digits.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero ? Optional.empty() : Optional.of(digits + " " + unit);
    }
}
