package org.steelyard.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.steelyard.model.trim.FlapEffect;
import org.steelyard.model.trim.TakeoffSpeed;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Airframe;
import org.steelyard.model.type.Airframe.StabilizerIndicator;
import org.steelyard.model.type.Airframe.TailPlane;
import org.steelyard.model.type.Airframe.Thrust;
import org.steelyard.model.type.Airframe.WingBody;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.SampleJet;

/** A scale estimated for the sample jet, whose envelope runs from 20 to 30 % MAC and from 41 to 60 t. */
class EstimatedScaleTest {

    private static final AircraftType TYPE = SampleJet.type();
    private static final FlapEffect OVER_STALL =
            new FlapEffect("5", 0.4, -0.08, 0.02, new TakeoffSpeed.OverStall(1.25, 2));
    private static final FlapEffect FIXED = new FlapEffect("5", 0.4, -0.08, 0.02, new TakeoffSpeed.Fixed(75));

    private static Airframe airframe(Thrust thrust, FlapEffect flap, double wingM) {
        return new Airframe(
                TYPE.id(),
                "a test",
                new WingBody(105, wingM, 5.1, Math.toRadians(-2), -0.05),
                new TailPlane(28, 31, 4.1, 0.95, 0.35, 0),
                thrust,
                new StabilizerIndicator(TrimUnit.DEGREES, 0, Math.toDegrees(1), 0.25, -4, 12),
                List.of(flap));
    }

    private static EstimatedScale estimate(Thrust thrust, FlapEffect flap) {
        return EstimatedScale.of(TYPE, airframe(thrust, flap, 16.9), flap);
    }

    @Test
    void anEstimateIsMarkedAndCoversTheEnvelope() {
        EstimatedScale estimated = estimate(new Thrust(0, 0), OVER_STALL);
        assertThat(estimated.scale().basis()).isEqualTo(TrimBasis.ESTIMATE);
        assertThat(estimated.scale().flaps()).isEqualTo("5");
        assertThat(estimated.scale().law().cgRange().fromPercentMac()).isCloseTo(20, within(1e-9));
        assertThat(estimated.scale().law().cgRange().toPercentMac()).isCloseTo(30, within(1e-9));
    }

    @Test
    void aFactorOnTheStallWithoutThrustGivesOneLineForEveryMass() {
        assertThat(estimate(new Thrust(0, 0), OVER_STALL).scale().law()).isInstanceOf(TrimPoints.class);
        assertThat(estimate(new Thrust(200_000, 1), OVER_STALL).scale().law()).isInstanceOf(TrimTable.class);
        assertThat(estimate(new Thrust(0, 0), FIXED).scale().law()).isInstanceOf(TrimTable.class);
    }

    @Test
    void theScaleIsTheBalanceAtItsPointsAndItsLineBetweenThem() {
        EstimatedScale estimated = estimate(new Thrust(200_000, 1), FIXED);
        Airframe airframe = airframe(new Thrust(200_000, 1), FIXED, 16.9);
        MomentBalance balance =
                new MomentBalance(airframe, FIXED, TYPE.geometry().chord());
        for (double cg : new double[] {20.00001, 23, 27.5, 29.99999}) {
            for (double massKg : new double[] {41_000, 50_500, 55_250}) {
                double armM = TYPE.geometry().chord().armAt(cg);
                double exact = airframe.indicator()
                        .trimUnits(balance.balance(MassMoment.at(massKg, armM)).stabilizerRad());
                assertThat(estimated.scale().law().trimUnitsAt(cg, massKg).orElseThrow())
                        .isCloseTo(exact, within(1e-9));
            }
        }
    }

    @Test
    void theStaticMarginIsTheDistanceToTheNeutralPoint() {
        Airframe airframe = airframe(new Thrust(0, 0), OVER_STALL, 16.9);
        double neutralM =
                new MomentBalance(airframe, OVER_STALL, TYPE.geometry().chord()).neutralPointArmM();
        EstimatedScale estimated = estimate(new Thrust(0, 0), OVER_STALL);
        assertThat(estimated.staticMarginPercentMac()).isCloseTo(100 * (neutralM - 17.2) / 4, within(1e-9));
        Airframe unstable = airframe(new Thrust(0, 0), OVER_STALL, 12);
        assertThat(EstimatedScale.of(TYPE, unstable, OVER_STALL).staticMarginPercentMac())
                .isNegative();
    }
}
