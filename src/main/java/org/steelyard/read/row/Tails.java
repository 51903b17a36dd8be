package org.steelyard.read.row;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.EditDistance;
import org.steelyard.read.text.KnownNames;

/**
 * The fleet by registration: exactly as written, else without regard to case where only one tail is meant. With it the
 * schemes of standard masses that rows and heading maps may name.
 */
public final class Tails {

    /** No registration is longer, so a longer text is not a mistyped one. */
    private static final int LONGEST = 40;

    private static final int MOST_HINTS = 3;

    private final Map<String, Tail> exact = new HashMap<>();
    private final Map<String, List<Tail>> folded = new HashMap<>();
    private final Map<String, String> registrations = new TreeMap<>();
    private final Map<String, AircraftType> types = new LinkedHashMap<>();
    private final Map<String, MassScheme> schemes = new TreeMap<>();

    private Tails(Collection<Tail> fleet, Collection<MassScheme> schemes) {
        for (MassScheme scheme : schemes) {
            this.schemes.put(scheme.id(), scheme);
        }
        for (Tail tail : fleet) {
            if (exact.put(tail.registration(), tail) != null) {
                throw new IllegalArgumentException("tail " + tail.registration() + " is in the fleet twice");
            }
            folded.computeIfAbsent(fold(tail.registration()), key -> new ArrayList<>())
                    .add(tail);
            registrations.put(tail.registration(), fold(tail.registration()));
            types.putIfAbsent(tail.type().id(), tail.type());
        }
    }

    /**
     * The tails of a fleet.
     *
     * @param fleet each registration once
     * @return the tails
     * @throws IllegalArgumentException if a registration is there twice
     */
    public static Tails of(Collection<Tail> fleet) {
        return new Tails(fleet, fleet.stream().map(Tail::scheme).toList());
    }

    /**
     * The tails of a fleet and the schemes that rows may name.
     *
     * @param fleet each registration once
     * @param schemes schemes of standard masses
     * @return the tails
     * @throws IllegalArgumentException if a registration is there twice
     */
    public static Tails of(Collection<Tail> fleet, Collection<MassScheme> schemes) {
        return new Tails(fleet, schemes);
    }

    /** The ids of the schemes. */
    public KnownNames schemes() {
        return new KnownNames(List.copyOf(schemes.keySet()));
    }

    /** A scheme by its id, exactly as written. */
    public Optional<MassScheme> scheme(String id) {
        return Optional.ofNullable(schemes.get(id));
    }

    private static String fold(String registration) {
        return registration.toUpperCase(Locale.ROOT);
    }

    /** The tail that a text without blanks around it means. */
    public Optional<Tail> find(String registration) {
        Tail tail = exact.get(registration);
        if (tail != null) {
            return Optional.of(tail);
        }
        List<Tail> alike = folded.getOrDefault(fold(registration), List.of());
        return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
    }

    /** The types that fly in the fleet. */
    public Collection<AircraftType> types() {
        return types.values();
    }

    /** At most three registrations that a mistyped one may mean, nearest first. */
    public List<String> nearest(String registration) {
        if (registration.length() > LONGEST) {
            return List.of();
        }
        String wanted = fold(registration);
        int reach = Math.max(2, wanted.length() / 2);
        List<Near> nearest = new ArrayList<>();
        int most = reach;
        for (Map.Entry<String, String> known : registrations.entrySet()) {
            int distance = EditDistance.within(wanted, known.getValue(), most);
            if (distance <= most) {
                nearest.add(new Near(known.getKey(), distance));
                nearest.sort(Comparator.comparing(Near::distance));
            }
            if (nearest.size() > MOST_HINTS) {
                nearest.remove(MOST_HINTS);
            }
            if (nearest.size() == MOST_HINTS) {
                most = nearest.get(MOST_HINTS - 1).distance() - 1; // of equals the first by name stays
            }
            if (most < 0) {
                break;
            }
        }
        return nearest.stream().map(Near::registration).toList();
    }

    private record Near(String registration, int distance) {}
}
