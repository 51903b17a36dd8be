package org.steelyard.config.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.config.value.Accepts;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.NotAcceptedException;
import org.steelyard.config.value.Words;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.MarkingScheme.ItemRule;

/** The marking scheme for load sheets. */
public final class MarkingFile {

    private static final double ALL = 100;

    private MarkingFile() {}

    public static Optional<MarkingScheme> read(Keys keys) {
        String name = keys.text("scheme");
        double passPercent = share(keys, "pass");
        double followPercent = share(keys, "follow-through");
        DuplicateRule handedInTwice = keys.find(
                        "handed-in-twice", Words.choice(DuplicateRule::label, List.of(DuplicateRule.values())))
                .orElse(DuplicateRule.LAST);
        List<ItemRule> items = new ArrayList<>(keys.each("items", MarkingFile::item));
        keys.names("item", "items", "item");
        return keys.make(() -> new MarkingScheme(name, passPercent, followPercent, handedInTwice, items));
    }

    private static double share(Keys keys, String key) {
        return keys.read(
                key,
                text -> {
                    double percent = WrittenNumber.PERCENT.read(text);
                    if (percent > ALL) {
                        throw new NotAcceptedException("more than all", "a share from 0 % to 100 %");
                    }
                    return percent;
                },
                1.0);
    }

    private static Optional<ItemRule> item(Keys keys) {
        SheetItem item = keys.read("item", Words.choice(SheetItem::key, SheetItem.ALL), SheetItem.VERDICT);
        double points = keys.read("points", MarkingFile::points, 1.0);
        double within = keys.find("within", measure(item)).orElse(0.0);
        double sharePercent = keys.find("share", WrittenNumber.PERCENT).orElse(0.0);
        double rounding = keys.find("rounding", measure(item)).orElse(0.0);
        if (item.kind() != SheetItem.Kind.MASS && keys.has("share")) {
            keys.fault("share", "only a mass has a tolerance by share", "no share");
        }
        return keys.make(() -> new ItemRule(item, points, within, sharePercent, rounding));
    }

    private static double points(String text) throws NotAcceptedException {
        return WrittenNumber.positiveNumber(text);
    }

    private static Accepts<Double> measure(SheetItem item) {
        return switch (item.kind()) {
            case MASS -> WrittenNumber.MASS_OR_NONE;
            case CG -> WrittenNumber.PERCENT_MAC;
            case TRIM -> WrittenNumber.TRIM;
            case LIMIT, VERDICT ->
                text -> {
                    throw new NotAcceptedException("words are right or wrong, without a tolerance", "no tolerance");
                };
        };
    }
}
