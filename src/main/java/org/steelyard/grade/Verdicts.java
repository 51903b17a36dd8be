package org.steelyard.grade;

import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.check.Checker;
import org.steelyard.grade.Exercise.LimitReading;
import org.steelyard.model.Finding;
import org.steelyard.model.FindingCode;
import org.steelyard.model.Loading;
import org.steelyard.model.Severity;

/** In limits means that the checks find no breach; a recorded setting plays no part. */
final class Verdicts {

    private Verdicts() {}

    static boolean inLimits(Exercise exercise, LimitReading reading, Balance balance) {
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
