package org.steelyard.grade.working;

import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.check.flight.Checker;
import org.steelyard.grade.working.Exercise.LimitReading;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Loading;

/** In limits means that the checks find no breach; a recorded setting plays no part. */
public final class Verdicts {

    private Verdicts() {}

    public static boolean inLimits(Exercise exercise, LimitReading reading, Balance balance) {
        Optional<Loading> loading = exercise.reading(reading);
        Loading held = loading.orElse(exercise.loading());
        for (Finding finding : Checker.check(held, balance, exercise.policy()).findings()) {
            if (finding.severity() == Severity.BREACH && finding.code() != FindingCode.TRIM_RECORDED) {
                return false;
            }
        }
        return true;
    }
}
