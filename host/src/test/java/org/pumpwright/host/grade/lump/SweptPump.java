package org.pumpwright.host.grade.lump;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.pumpwright.host.plant.HeadParameters;
import org.pumpwright.host.plant.MotorParameters;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpSteadyState;
import org.pumpwright.host.plant.StandParameters;
import org.pumpwright.host.plant.UsUnits;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Sweeps of simulated pumps in steady state, read with errors of stated size. A seed always gives the same readings. Confined
 * to one thread.
 */
final class SweptPump {
    /** The duties of a sweep of ten. */
    static final double[] DUTIES = {0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1};

    /** Standard uncertainty of the nozzle's coefficient where it is not verified. */
    static final double NOZZLE = 0.03;

    /** Calibration as of a stand in order: volts 0.1 %, amps, K and pressure 0.5 %. */
    static final SharedErrors USUAL = new SharedErrors(
            new SharedErrors.Channel(0.001, 0),
            new SharedErrors.Channel(0.005, 0),
            new SharedErrors.Channel(0.005, 0),
            new SharedErrors.Channel(0.005, 0));

    private static final double VOLTS = 0.005;
    private static final double PRESSURE_PA = 0.2 * UsUnits.PSI;

    private final PumpParameters pump;
    private final SharedErrors shared;
    private final Random random;
    private final double[] gains = new double[4];
    private final double nozzle;
    private double noise = 1;

    SweptPump(PumpParameters pump, SharedErrors shared, long seed) {
        this.pump = pump;
        this.shared = shared;
        random = new Random(seed);
        SharedErrors.Channel[] channels = {shared.volts(), shared.amps(), shared.flow(), shared.pressure()};
        for (int i = 0; i < gains.length; i++) {
            gains[i] = 1 + channels[i].gain() * random.nextGaussian();
        }
        nozzle = pump.stand().nozzleM3PerSecondRootPascal() * (1 + NOZZLE * random.nextGaussian());
    }

    /** The same without any error of a reading; the uncertainties stay as they are. */
    SweptPump exact() {
        noise = 0;
        Arrays.fill(gains, 1);
        return this;
    }

    LumpInput sweep(boolean withPressure) {
        return sweep(withPressure, DUTIES);
    }

    LumpInput sweep(boolean withPressure, double... duties) {
        List<LumpPoint> points = new ArrayList<>();
        for (double duty : duties) {
            PumpSteadyState state = PumpSteadyState.of(pump, duty);
            if (state.flowM3PerSecond() > 0) {
                points.add(new LumpPoint(
                        volts(state),
                        amps(state),
                        flow(state),
                        withPressure ? Optional.of(pressure(state)) : Optional.empty()));
            }
        }
        double coefficient = noise == 0 ? pump.stand().nozzleM3PerSecondRootPascal() : nozzle;
        return LumpInput.of(
                points,
                shared,
                withPressure ? Optional.empty() : Optional.of(Uncertain.of(coefficient, NOZZLE * coefficient)));
    }

    DeadHead deadHead() {
        PumpSteadyState state = PumpSteadyState.deadHead(pump, 1);
        return new DeadHead(volts(state), amps(state), pressure(state));
    }

    /** A pulse at 13 % duty, or shorter of the start where the unit starts early. */
    Standstill standstill() {
        double duty = Math.min(0.13, 0.9 * PumpSteadyState.startDuty(pump));
        double amps = PumpSteadyState.of(pump, duty).motorAmps();
        double ohms = drivingVolts(duty, amps) / amps;
        return new Standstill(read(ohms * gains[0] / gains[1], 0.01 * ohms), amps);
    }

    /** The true lump. */
    static double truth(PumpParameters pump, Lump lump) {
        MotorParameters motor = pump.motor();
        HeadParameters head = pump.head();
        double k = motor.torqueConstant();
        double stroke = head.displacementM3PerRadian();
        return switch (lump) {
            case FLOW_PER_VOLT -> (stroke * (1 - head.airFraction()) - head.backflowM3PerRadian()) / k;
            case NO_LOAD_AMPS -> motor.runningFrictionNewtonMetre() / k;
            case AMPS_PER_PRESSURE -> stroke / head.torqueEfficiency() / k;
            case OHMS -> motor.resistanceOhms() + motor.contactOhms();
            case SLIP -> head.slipM3PerSecondPascal();
            default -> throw new IllegalArgumentException(lump + " is no parameter of a pump");
        };
    }

    private Uncertain volts(PumpSteadyState state) {
        return read(drivingVolts(state.duty(), state.motorAmps()) * gains[0], VOLTS);
    }

    private double drivingVolts(double duty, double motorAmps) {
        StandParameters stand = pump.stand();
        double whileOn = stand.openCircuitVolts() - motorAmps * (stand.supplyOhms() + stand.leadOhms());
        return duty * whileOn - (1 - duty) * stand.freewheelVolts();
    }

    private Uncertain amps(PumpSteadyState state) {
        double amps = state.motorAmps();
        return read(amps * gains[1], Math.hypot(0.01 * amps, 0.03));
    }

    private Uncertain flow(PumpSteadyState state) {
        double flow = state.flowM3PerSecond();
        return read(flow * gains[2], Math.hypot(0.006 * flow, 0.008 * UsUnits.GALLON_PER_MINUTE));
    }

    private Uncertain pressure(PumpSteadyState state) {
        return read(state.pressurePa() * gains[3], PRESSURE_PA);
    }

    private Uncertain read(double value, double u) {
        return Uncertain.of(value + noise * u * random.nextGaussian(), u);
    }
}
