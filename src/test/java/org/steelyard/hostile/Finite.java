package org.steelyard.hostile;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.Amounts;

/** Looks through values for numbers that are none. */
public final class Finite {

    private static final Set<Class<?>> SOUND = Set.of(AircraftType.class, Tail.class, MassScheme.class, Policy.class);
    private static final Map<Class<?>, Method[]> PARTS = new ConcurrentHashMap<>();

    private Finite() {}

    /**
     * Goes through a value and all its parts.
     *
     * @param value a record, collection or number
     * @param known parts that are sound, as what does not come from the input
     * @throws ReflectiveOperationException if a part cannot be asked for
     */
    public static void require(Object value, Set<Class<?>> known) throws ReflectiveOperationException {
        if (value instanceof Double number) {
            if (!Double.isFinite(number)) {
                throw new AssertionError("a number is " + number);
            }
        } else if (value instanceof OptionalDouble number) {
            if (number.isPresent()) {
                require(number.getAsDouble(), known);
            }
        } else if (value instanceof Optional<?> some && some.isPresent()) {
            require(some.get(), known);
        } else if (value instanceof Amounts amounts) {
            for (int i = 0; i < amounts.size(); i++) {
                require(amounts.at(i), known);
            }
        } else if (value instanceof Collection<?> several) {
            for (Object one : several) {
                require(one, known);
            }
        } else if (value instanceof Map<?, ?> several) {
            require(several.values(), known);
        } else if (value instanceof Record && !known.contains(value.getClass())) {
            for (Method part : PARTS.computeIfAbsent(value.getClass(), Finite::parts)) {
                try {
                    require(part.invoke(value), known);
                } catch (AssertionError e) {
                    throw new AssertionError(part.getName() + ": " + e.getMessage(), e);
                }
            }
        }
    }

    /** The same for what comes from a season: type, tail, scheme and policy are sound. */
    public static void require(Object value) throws ReflectiveOperationException {
        require(value, SOUND);
    }

    private static Method[] parts(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Method[] parts = new Method[components.length];
        for (int i = 0; i < components.length; i++) {
            parts[i] = components[i].getAccessor();
            parts[i].setAccessible(true);
        }
        return parts;
    }
}
