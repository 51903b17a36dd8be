package org.steelyard.balance;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.steelyard.model.policy.SharingRule;

/**
 * The places of one kind, zones or holds, while they are loaded: how many sit in each, the mass and its moment. What is
 * given for a place counts at its arm; what is given in total is shared out by a rule.
 */
final class Places {

    private final IntToDoubleFunction armM;
    private final IntToDoubleFunction capacity;
    private final double[] seated;
    private final double[] massKg;
    private final double[] momentKgM;
    private boolean assumed;

    Places(int count, IntToDoubleFunction armM, IntToDoubleFunction capacity) {
        this.armM = armM;
        this.capacity = capacity;
        seated = new double[count];
        massKg = new double[count];
        momentKgM = new double[count];
    }

    private double[] capacities() {
        return IntStream.range(0, massKg.length).mapToDouble(capacity).toArray();
    }

    double placeArmM(int place) {
        return armM.applyAsDouble(place);
    }

    /** The mean arm of all places by their capacities. */
    double meanArmM() {
        double sum = 0;
        double sumM = 0;
        for (int i = 0; i < massKg.length; i++) {
            sum += capacity.applyAsDouble(i);
            sumM += capacity.applyAsDouble(i) * armM.applyAsDouble(i);
        }
        return sumM / sum;
    }

    double[] seated() {
        return seated;
    }

    double[] massKg() {
        return massKg;
    }

    double[] momentKgM() {
        return momentKgM;
    }

    /** Whether something was shared out although it could lie otherwise. */
    boolean assumed() {
        return assumed;
    }

    void add(int place, double persons, double kg, double kgM) {
        seated[place] += persons;
        massKg[place] += kg;
        momentKgM[place] += kgM;
    }

    /** Shares persons by the rule; each place then carries its part of their mass, at the mean mass of all. */
    void sharePersons(double persons, double kg, SharingRule rule) {
        double[] capacities = capacities();
        double[] parts = Sharing.share(persons, capacities, rule);
        double[] kgs =
                persons == 0 ? Sharing.share(kg, capacities, SharingRule.BY_CAPACITY) : scaled(parts, kg / persons);
        addAll(parts, kgs);
    }

    /** Shares a mass by the rule. */
    void shareMass(double kg, SharingRule rule) {
        addAll(new double[massKg.length], Sharing.share(kg, capacities(), rule));
    }

    private void addAll(double[] persons, double[] kgs) {
        for (int i = 0; i < massKg.length; i++) {
            add(i, persons[i], kgs[i], kgs[i] * armM.applyAsDouble(i));
            assumed |= massKg.length > 1 && (persons[i] != 0 || kgs[i] != 0);
        }
    }

    /**
     * What comes to or goes from one place. What more goes than is there goes from the others, as much from each as it
     * has of all: that can only be where a total was shared out before.
     */
    void change(int place, double persons, double kg) {
        double kgs = Math.max(kg, -massKg[place]);
        double heads = Math.max(persons, -seated[place]);
        add(place, heads, kgs, kgs * armM(place, kgs));
        if (kgs > kg || heads > persons) {
            leave(persons - heads, kg - kgs);
        }
    }

    /** Comes anywhere: by the rule into the room that is left, or by capacity where there is none. */
    void come(double persons, double kg, SharingRule rule) {
        double[] room = capacities();
        boolean byPersons = persons > 0;
        for (int i = 0; i < room.length; i++) {
            room[i] = Math.max(room[i] - (byPersons ? seated[i] : massKg[i]), 0);
        }
        double[] into = Arrays.stream(room).sum() > 0 ? room : capacities();
        double[] parts = Sharing.share(byPersons ? persons : kg, into, rule);
        addAll(byPersons ? parts : new double[parts.length], byPersons ? scaled(parts, kg / persons) : parts);
    }

    /** Goes from anywhere, persons and mass both negative or 0: from each place as much as it has of all. */
    void leave(double persons, double kg) {
        double allKg = Arrays.stream(massKg).sum();
        double all = Arrays.stream(seated).sum();
        for (int i = 0; i < massKg.length; i++) {
            double kgs = allKg > 0 ? kg * massKg[i] / allKg : 0;
            add(i, all > 0 ? persons * seated[i] / all : 0, kgs, kgs * armM(i, kgs));
        }
        assumed |= massKg.length > 1 && (persons != 0 || kg != 0);
    }

    /** What comes sits at the arm of the place; what goes leaves from where the load of the place is on average. */
    private double armM(int place, double kg) {
        return kg < 0 && massKg[place] > 0 ? momentKgM[place] / massKg[place] : armM.applyAsDouble(place);
    }

    private static double[] scaled(double[] values, double factor) {
        double[] scaled = values.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        return scaled;
    }
}
