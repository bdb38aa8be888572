package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.pumpwright.host.plant.UsUnits.PSI;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.zip.CRC32;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Units that obey other laws than the plain ones, and that the plain ones are what they were. */
class PumpPhysicsTest {
    private static final String SEED = "20260301";
    private static final double STRIBECK = 40;
    private static final PumpPhysics CHANGED =
            PumpPhysics.PLAIN.withStribeckAt(STRIBECK).withNozzleExponent(0.46);

    /** Output of the plant for every fault and severity, at averaged and pulsed drives, from before there were other laws. */
    @Test
    void thePlainLawsGiveWhatTheyAlwaysGave() {
        CRC32 crc = new CRC32();
        for (PumpFault fault : PumpFault.values()) {
            for (Severity severity : Severity.values()) {
                addTo(crc, fault, severity);
            }
        }
        assertThat(Long.toHexString(crc.getValue())).isEqualTo("690b153f");
    }

    private static void addTo(CRC32 crc, PumpFault fault, Severity severity) {
        int number = 3 * fault.ordinal() + severity.ordinal();
        PumpParameters p = fault.applyTo(new PumpPopulation(5).unit(number), severity);
        if (number % 3 == 1) {
            p = p.withStand(p.stand().withDriveAt(500));
        }
        PumpPlant plant = new PumpPlant(p, SensorErrors.drawn(number), number);
        for (double duty : new double[] {0.1, 0.5, 0.25, 1, 0.05}) {
            for (int i = 0; i < 60; i++) {
                PlantReading reading = plant.step(0.05, new double[] {duty}, true);
                add(crc, reading.voltsAtPins(), reading.amps(), reading.pressurePa(), plant.windingKelvin());
                add(crc, reading.edgeOffsetsSeconds()[0]);
            }
        }
        add(crc, plant.ripple(0.4, 0.1, 200).pressurePa());
        PumpSteadyState steady = PumpSteadyState.of(p, 0.6);
        add(crc, steady.flowM3PerSecond(), steady.motorAmps());
    }

    private static void add(CRC32 crc, double... values) {
        ByteBuffer bytes = ByteBuffer.allocate(Double.BYTES * values.length);
        for (double value : values) {
            bytes.putDouble(value);
        }
        crc.update(bytes.array());
    }

    @Test
    void frictionFallsFromBreakawayToRunningFriction() {
        MotorParameters motor = MotorParameters.healthy();

        assertThat(CHANGED.friction(motor, 0)).isEqualTo(0.17);
        assertThat(CHANGED.friction(motor, STRIBECK)).isCloseTo(0.085 + 0.085 / Math.E, within(1e-12));
        assertThat(CHANGED.friction(motor, 10 * STRIBECK)).isEqualTo(0.085);
        assertThat(PumpPhysics.PLAIN.friction(motor, 1)).isEqualTo(0.085);
    }

    /** 20 psi is where the constant was found; a doubled pressure gives 2^n times the flow. */
    @Test
    void theNozzleObeysItsExponentAboutTheReference() {
        double at = CHANGED.outflow(20 * PSI);

        assertThat(at).isCloseTo(Math.sqrt(20 * PSI), within(1e-9));
        assertThat(CHANGED.outflow(40 * PSI) / at).isCloseTo(1.375542, within(1e-6));
        assertThat(CHANGED.pressurePa(CHANGED.outflow(33 * PSI))).isCloseTo(33 * PSI, within(1e-6));
        assertThat(CHANGED.outflow(0)).isZero();
    }

    @Test
    void aUnitStartsAtTheSameDutyWhateverItsFrictionDoesLater() {
        PumpParameters healthy = PumpParameters.healthy();

        assertThat(PumpSteadyState.startDuty(healthy.withPhysics(CHANGED)))
                .isEqualTo(PumpSteadyState.startDuty(healthy));
    }

    /** The torque of the current is that of friction, viscous loss and pressure: checked at the solved state. */
    @Property(seed = SEED)
    void theSolvedStateObeysBothLaws(
            @ForAll @IntRange(max = 5000) int unit, @ForAll @DoubleRange(min = 0.20, max = 1) double duty) {
        PumpParameters p = new PumpPopulation(6).unit(unit).withPhysics(CHANGED);

        PumpSteadyState s = PumpSteadyState.of(p, duty);

        MotorParameters m = p.motor();
        double w = s.speedRadPerSecond();
        if (w > 0) {
            double friction = m.runningFrictionNewtonMetre()
                    + Math.max(0, m.breakawayNewtonMetre() - m.runningFrictionNewtonMetre())
                            * Math.exp(-w * w / (STRIBECK * STRIBECK));
            double pressureTorque = p.head().displacementM3PerRadian()
                    * s.pressurePa()
                    / p.head().torqueEfficiency();
            assertThat(m.torqueConstant() * s.motorAmps())
                    .isCloseTo(friction + m.viscousNewtonMetreSecond() * w + pressureTorque, within(1e-7));
            assertThat(s.flowM3PerSecond())
                    .isCloseTo(
                            p.stand().nozzleM3PerSecondRootPascal()
                                    * Math.sqrt(20 * PSI)
                                    * Math.pow(s.pressurePa() / (20 * PSI), 0.46),
                            within(1e-12));
        }
    }

    @Property(seed = SEED)
    void moreDutyNeverGivesLessFlowUnderOtherLaws(
            @ForAll @IntRange(max = 5000) int unit,
            @ForAll PumpFault fault,
            @ForAll Severity severity,
            @ForAll @DoubleRange(min = 0, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 1) double b) {
        PumpParameters p = fault.applyTo(new PumpPopulation(7).unit(unit).withPhysics(CHANGED), severity);

        double low = PumpSteadyState.of(p, Math.min(a, b)).flowM3PerSecond();
        double high = PumpSteadyState.of(p, Math.max(a, b)).flowM3PerSecond();

        assertThat(high).isGreaterThanOrEqualTo(low - 1e-12);
    }

    @Property(seed = SEED, tries = 40)
    void aRunSettlesToTheSteadyStateUnderOtherLaws(
            @ForAll @IntRange(max = 5000) int unit, @ForAll @DoubleRange(min = 0.25, max = 1) double duty) {
        PumpParameters p = new PumpPopulation(8).unit(unit).withPhysics(CHANGED);
        PumpParameters cool = p.withThermal(new ThermalParameters(1e6, 0.55, 1e7, 0.75));
        PumpSteadyState s = PumpSteadyState.of(p, duty);

        PlantReading r = Bench.of(cool).hold(duty, 12);

        assertThat(r.pressurePa()).isCloseTo(s.pressurePa(), within(2e-4 * s.pressurePa()));
        assertThat(r.amps()).isCloseTo(s.batteryAmps(), within(2e-4 * s.batteryAmps()));
    }

    /** At the edge of turning, where the speed without pressure is next to nothing; and where breakaway is below running friction. */
    @Test
    void everyUnitHasASteadyStateAtEveryDutyUnderOtherLaws() {
        PumpParameters nominal = PumpParameters.healthy().withPhysics(CHANGED);
        nominal = nominal.withStand(nominal.stand().withDriveAt(7812));
        for (int unit = 0; unit < 200; unit++) {
            for (PumpFault fault :
                    List.of(PumpFault.DRAG, PumpFault.SHORTED_TURNS, PumpFault.BRUSH, PumpFault.STRAINER)) {
                PumpParameters p = fault.applyTo(new PumpPopulation(9, nominal).unit(unit), Severity.SEVERE);
                double start = Math.min(0.99, PumpSteadyState.startDuty(p));
                for (double duty : new double[] {start, start + 1e-4, 0.15, 0.2, 0.25}) {
                    assertThat(PumpSteadyState.of(p, duty).flowM3PerSecond()).isNotNegative();
                }
            }
        }
    }

    /** Friction that falls with speed keeps a turning shaft turning below the duty at which it starts. */
    @Test
    void aTurningUnitStopsAtALowerDutyThanItStartsAt() {
        PumpParameters p = PumpParameters.healthy().withPhysics(PumpPhysics.PLAIN.withStribeckAt(STRIBECK));
        double startDuty = PumpSteadyState.startDuty(p);
        Bench fromAbove = Bench.of(p);
        fromAbove.hold(0.5, 3);

        PlantReading below = fromAbove.hold(startDuty - 0.002, 20);
        PlantReading atRest = Bench.of(p).hold(startDuty - 0.002, 20);

        assertThat(below.edgeOffsetsSeconds()[0].length + below.pressurePa()).isPositive();
        assertThat(atRest.pressurePa()).isZero();
    }

    @Test
    void aPopulationAboutAnotherNominalUnitKeepsItsLawsAndItsStand() {
        PumpParameters nominal = PumpParameters.healthy().withPhysics(CHANGED);
        nominal = nominal.withStand(nominal.stand().withDriveAt(7812));

        PumpParameters unit = new PumpPopulation(3, nominal).unit(4);

        assertThat(unit.physics()).isEqualTo(CHANGED);
        assertThat(unit.stand()).isEqualTo(nominal.stand());
        assertThat(unit.withPhysics(PumpPhysics.PLAIN).withStand(StandParameters.inOrder()))
                .isEqualTo(new PumpPopulation(3).unit(4));
    }

    @Test
    void lawsBeyondAnyPumpAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> PumpPhysics.PLAIN.withNozzleExponent(0.8));
        assertThatIllegalArgumentException().isThrownBy(() -> PumpPhysics.PLAIN.withStribeckAt(-1));
    }
}
