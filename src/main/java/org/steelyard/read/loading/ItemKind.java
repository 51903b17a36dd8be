package org.steelyard.read.loading;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.model.type.PassengerCategory;

/** What a load item is. The words are those of the trade; ADT, CHD and INF are IATA's passenger type codes. */
enum ItemKind {
    MALE(PassengerCategory.MALE, "male", "males", "man", "men", "m"),
    FEMALE(PassengerCategory.FEMALE, "female", "females", "woman", "women", "f"),
    ADULT(PassengerCategory.ADULT, "adult", "adults", "adt", "passenger", "passengers", "pax"),
    CHILD(PassengerCategory.CHILD, "child", "children", "chd"),
    INFANT(PassengerCategory.INFANT, "infant", "infants", "inf"),
    BAGS(null, "bags", "bag", "baggage"),
    CARGO(null, "cargo", "freight", "mail"),
    FUEL(null, "fuel"),
    CREW(null, "crew"),
    /** Nothing is said: it follows from the place. */
    UNSAID(null);

    /** The words that are accepted, one for each kind, for messages. */
    static final String WORDS = "male, female, adult, child, infant, bags, cargo, fuel or crew";

    static final List<ItemKind> ALL = List.of(values());

    private final Optional<PassengerCategory> category;

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    ItemKind(PassengerCategory category, String... words) {
        this.category = Optional.ofNullable(category);
        this.words = List.of(words);
    }

    /** The kind that a word stands for, in any case of letters. */
    static Optional<ItemKind> of(String word) {
        String folded = word.toLowerCase(Locale.ROOT);
        return ALL.stream().filter(kind -> kind.words.contains(folded)).findFirst();
    }

    /** Category of passengers, if it is one. */
    Optional<PassengerCategory> category() {
        return category;
    }

    String word() {
        return words.isEmpty() ? "item" : words.get(0);
    }
}
