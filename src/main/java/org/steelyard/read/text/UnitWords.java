package org.steelyard.read.text;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.steelyard.model.input.ColumnUnit;

/** How people spell units in headings and cells; capitals, blanks, full stops and underscores aside. */
public final class UnitWords {

    private static final Map<ColumnUnit, String> SPELLINGS = Map.ofEntries(
            Map.entry(ColumnUnit.KG, "kg kgs kilogram kilograms"),
            Map.entry(ColumnUnit.LB, "lb lbs pound pounds"),
            Map.entry(ColumnUnit.TONNE, "t tonne tonnes"),
            Map.entry(ColumnUnit.LITRE, "l ltr ltrs litre litres liter liters"),
            Map.entry(ColumnUnit.US_GALLON, "usgal usgals usg usgallon usgallons"),
            Map.entry(ColumnUnit.IMPERIAL_GALLON, "impgal impgals impg impgallon impgallons imperialgallons"),
            Map.entry(ColumnUnit.KG_PER_LITRE, "kg/l kg/ltr kg/litre kgperlitre"),
            Map.entry(ColumnUnit.LB_PER_US_GALLON, "lb/usgal lbs/usgal lb/usg lbs/usg"),
            Map.entry(ColumnUnit.PERCENT_MAC, "%mac % mac% percentmac pctmac percent"),
            Map.entry(ColumnUnit.METRE, "m metre metres meter meters"),
            Map.entry(ColumnUnit.MILLIMETRE, "mm millimetre millimetres millimeter millimeters"),
            Map.entry(ColumnUnit.INCH, "in ins inch inches"),
            Map.entry(ColumnUnit.INDEX, "index indexunits"));

    private static final Map<String, ColumnUnit> UNITS = units();

    private UnitWords() {}

    private static Map<String, ColumnUnit> units() {
        Map<String, ColumnUnit> units = new HashMap<>();
        SPELLINGS.forEach((unit, words) -> {
            for (String word : words.split(" ", -1)) {
                units.put(word, unit);
            }
        });
        return Map.copyOf(units);
    }

    /** The unit that a text spells, if it is one. */
    public static Optional<ColumnUnit> of(String text) {
        return Optional.ofNullable(UNITS.get(folded(text)));
    }

    /** Whether a text names a gallon and not which: they differ by a fifth. */
    public static boolean isAnyGallon(String text) {
        String word = folded(text);
        return word.equals("gal") || word.equals("gals") || word.equals("gallon") || word.equals("gallons");
    }

    private static String folded(String text) {
        StringBuilder word = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!Blanks.isBlank(c) && c != '.' && c != '_') {
                word.append(c);
            }
        }
        return word.toString().toLowerCase(Locale.ROOT);
    }
}
