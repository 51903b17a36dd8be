package org.steelyard.grade;

import java.util.OptionalDouble;
import org.steelyard.model.Fuel;
import org.steelyard.model.Load;
import org.steelyard.model.Loading;

/** A loading with another load or fuel. */
final class Loadings {

    private Loadings() {}

    static Loading with(Loading loading, Load load, Fuel fuel) {
        return new Loading(
                loading.origin(),
                loading.flight(),
                loading.tail(),
                loading.setting(),
                loading.crew(),
                load,
                fuel,
                loading.performance(),
                OptionalDouble.empty(),
                loading.extras());
    }
}
