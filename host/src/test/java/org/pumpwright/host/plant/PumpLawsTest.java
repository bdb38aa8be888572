package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold for every unit, healthy or not, whatever its parameters. */
class PumpLawsTest {

    private static final String SEED = "20260101";

    @Property(seed = SEED)
    void moreDutyNeverGivesLessFlow(
            @ForAll @IntRange(max = 5000) int unit,
            @ForAll PumpFault fault,
            @ForAll Severity severity,
            @ForAll @DoubleRange(min = 0, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 1) double b) {
        PumpParameters p = fault.applyTo(new PumpPopulation(1).unit(unit), severity);

        double low = PumpSteadyState.of(p, Math.min(a, b)).flowM3PerSecond();
        double high = PumpSteadyState.of(p, Math.max(a, b)).flowM3PerSecond();

        assertThat(high).isGreaterThanOrEqualTo(low - 1e-12);
    }

    @Property(seed = SEED)
    void whatTheSupplyGivesIsAccountedFor(
            @ForAll @IntRange(max = 5000) int unit,
            @ForAll PumpFault fault,
            @ForAll Severity severity,
            @ForAll @DoubleRange(min = 0.05, max = 1) double duty) {
        PumpParameters p = fault.applyTo(new PumpPopulation(2).unit(unit), severity);

        PumpSteadyState s = PumpSteadyState.of(p, duty);

        double feedOhms = p.stand().supplyOhms() + p.stand().leadOhms();
        double voltsWhileConducting = s.terminalVolts() - (1 - duty) * s.batteryAmps() / duty * feedOhms;
        double supplied = voltsWhileConducting * s.batteryAmps();
        double leaked =
                duty * voltsWhileConducting * voltsWhileConducting / p.circuit().caseLeakOhms();
        double used = leaked + electricalLosses(p, s) + frictionLosses(p, s) + chamberWatts(p, s);
        assertThat(used).isCloseTo(supplied, within(1e-7 * (1 + supplied)));
    }

    @Property(seed = SEED)
    void whatTheChambersGiveIsTheFlowOutAndTheLossesInside(
            @ForAll @IntRange(max = 5000) int unit, @ForAll @DoubleRange(min = 0.3, max = 1) double duty) {
        PumpParameters p = new PumpPopulation(3).unit(unit);
        HeadParameters h = p.head();

        PumpSteadyState s = PumpSteadyState.of(p, duty);

        double pressure = s.pressurePa();
        double swept = h.displacementM3PerRadian() * s.speedRadPerSecond();
        double bent = swept * h.complianceLossPerPascal() * pressure;
        double leaked = h.slipM3PerSecondPascal() * pressure + h.backflowM3PerRadian() * s.speedRadPerSecond();
        double bypassed = h.bypassM3PerSecondPascal() * Math.max(0, pressure - h.bypassOpensPascal());
        assertThat(s.flowM3PerSecond() + bent + leaked + bypassed).isCloseTo(swept, within(1e-9 * swept));
    }

    @Property(seed = SEED, tries = 60)
    void aRunSettlesToTheSteadyState(
            @ForAll @IntRange(max = 5000) int unit, @ForAll @DoubleRange(min = 0.25, max = 1) double duty) {
        PumpParameters p = new PumpPopulation(4).unit(unit);
        PumpParameters cool = p.withThermal(new ThermalParameters(1e6, 0.55, 1e7, 0.75));
        PumpSteadyState s = PumpSteadyState.of(p, duty);

        PlantReading r = Bench.of(cool).hold(duty, 12);

        assertThat(r.pressurePa()).isCloseTo(s.pressurePa(), within(2e-4 * s.pressurePa()));
        assertThat(r.amps()).isCloseTo(s.batteryAmps(), within(2e-4 * s.batteryAmps()));
        assertThat(r.voltsAtPins()).isCloseTo(s.terminalVolts(), within(1e-3));
    }

    /** Copper, brushes and the freewheel path, which carries the motor current while the switch is off. */
    private static double electricalLosses(PumpParameters p, PumpSteadyState s) {
        double copper = 1 + 0.00393 * p.arrival().warmerKelvin();
        double ohms = p.motor().resistanceOhms() * copper + p.motor().contactOhms();
        double drops = p.motor().brushVolts() + (1 - s.duty()) * p.stand().freewheelVolts();
        return s.motorAmps() * (s.motorAmps() * ohms + drops);
    }

    private static double frictionLosses(PumpParameters p, PumpSteadyState s) {
        double torque =
                p.motor().runningFrictionNewtonMetre() + p.motor().viscousNewtonMetreSecond() * s.speedRadPerSecond();
        return torque * s.speedRadPerSecond();
    }

    /** Work on the liquid in the chambers: their stroke against the pressure, or what of it fills at a clogged inlet. */
    private static double chamberWatts(PumpParameters p, PumpSteadyState s) {
        HeadParameters h = p.head();
        double stroke = h.displacementM3PerRadian() * h.liveShare() * s.speedRadPerSecond();
        double filling = (1 - h.complianceLossPerPascal() * s.pressurePa()) * (1 - h.airFraction());
        double out = s.flowM3PerSecond()
                * (1
                        + p.stand().recirculationM3PerSecondRootPascal()
                                / p.stand().nozzleM3PerSecondRootPascal());
        double inside = h.slipM3PerSecondPascal() * s.pressurePa()
                + h.backflowM3PerRadian() * h.liveShare() * s.speedRadPerSecond()
                + h.bypassM3PerSecondPascal() * Math.max(0, s.pressurePa() - h.bypassOpensPascal());
        double filled = Math.min(stroke, (out + inside) / filling);
        return filled * s.pressurePa() / h.torqueEfficiency();
    }
}
