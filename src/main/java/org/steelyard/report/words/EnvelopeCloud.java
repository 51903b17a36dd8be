package org.steelyard.report.words;

import java.util.EnumMap;
import java.util.Map;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.type.AircraftType;

/**
 * Take-off mass (y, in kg) and CG (x, in % MAC) of the flights of one type by status, for its picture. All breached and
 * marginal flights are kept; of the clean ones at most 5,000.
 */
public final class EnvelopeCloud {

    private static final int CLEAN = 5000;

    private final AircraftType type;
    private final Map<Status, Points> points = new EnumMap<>(Status.class);

    public EnvelopeCloud(AircraftType type) {
        this.type = type;
        points.put(Status.CLEAN, Points.atMost(CLEAN));
        points.put(Status.MARGINAL, Points.all());
        points.put(Status.BREACHED, Points.all());
    }

    public void add(AuditedFlight flight, Status status) {
        double massKg = flight.balance().takeoff().massKg();
        double cgPercentMac =
                FlightFigures.cgPercentMac(flight.loading(), flight.balance().takeoff());
        of(status).add(cgPercentMac, massKg);
    }

    public AircraftType type() {
        return type;
    }

    public Points of(Status status) {
        return points.get(status);
    }
}
