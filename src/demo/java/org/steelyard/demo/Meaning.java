package org.steelyard.demo;

import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.PassengerCategory;

/** What a cell of a row means, whatever its heading. The one column carried along is the pilot's name. */
record Meaning(Field field, String place, PassengerCategory category) {

    static Meaning of(Field field) {
        return at(field, "");
    }

    static Meaning at(Field field, String place) {
        return new Meaning(field, place, PassengerCategory.ADULT);
    }

    static Meaning persons(String zone, PassengerCategory category) {
        return new Meaning(Field.PASSENGERS, zone, category);
    }

    static Meaning of(ColumnRule rule) {
        return new Meaning(rule.field(), rule.place(), rule.category());
    }
}
