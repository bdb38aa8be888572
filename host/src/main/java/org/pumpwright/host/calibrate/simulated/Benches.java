package org.pumpwright.host.calibrate.simulated;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.pumpwright.host.calibrate.Bench;
import org.pumpwright.host.calibrate.Comparing;
import org.pumpwright.host.calibrate.Declared;
import org.pumpwright.host.calibrate.FlowRange;
import org.pumpwright.host.calibrate.Measuring;
import org.pumpwright.host.calibrate.Method;
import org.pumpwright.host.calibrate.Scale;
import org.pumpwright.host.calibrate.Start;
import org.pumpwright.host.calibrate.Thermometer;
import org.pumpwright.host.calibrate.Timing;
import org.pumpwright.host.calibrate.Weighing;
import org.pumpwright.host.calibrate.WorkingFlow;
import org.pumpwright.host.calibrate.fluid.Air;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;

/** The made-up benches, one of each method, with a small meter of about 3000 pulses per gallon. Thread-safe. */
public final class Benches {
    private static final double[] SET_GPM = {0.25, 1, 2, 4};
    private static final double[] SCATTER = {0.0018, 0.0011, 0.0009, 0.0005};

    /** Between the calibrated flows, where the customer's planter is taken to run. */
    public static final FlowRate WORKING = FlowRate.ofGallonsPerMinute(1.5);

    private Benches() {}

    /** Every made-up test by its name, in the order of the names. */
    public static Map<String, MadeUpTest> all() {
        Map<String, MadeUpTest> all = new TreeMap<>();
        all.put("weighed, flying", weighedFlying());
        all.put("weighed, standing", weighedStanding());
        all.put("graduated vessel, flying", vessel());
        all.put("master meter", master());
        return all;
    }

    private static MadeUpTest weighedFlying() {
        Scale scale = new Scale(certificate("S-1"), 0.004, 2, 0.004, 0.002, 0.003, 30);
        return test(weighing(scale, 0.004, 0.02), new Timing(Start.FLYING, 0, 0.025), 3e-6, 121, 120, 120, 60);
    }

    private static MadeUpTest weighedStanding() {
        Scale scale = new Scale(certificate("S-2"), 0.01, 2, 0.01, 0.005, 0.005, 120);
        Timing timing = new Timing(Start.STANDING, 0.5, 0.15);
        return test(weighing(scale, 0.006, 0.1), timing, 5e-6, 600, 300, 240, 180);
    }

    private static MadeUpTest vessel() {
        Measuring vessel = new Measuring(certificate("V-1"), 0.005, 2, 1.9e-4, 2e-5, 2e-4, 20, 0.02);
        return test(vessel, new Timing(Start.FLYING, 0, 0.1), 5e-6, 1140, 285, 142, 71);
    }

    private static MadeUpTest master() {
        FlowRange range = new FlowRange(gpm(0.2), gpm(6));
        KCurve k = KCurve.constant(KFactor.ofPulsesPerUsGallon(6000));
        Comparing master = new Comparing(certificate("M-1"), k, 0.003, 2, 0.001, range);
        return test(master, new Timing(Start.FLYING, 0, 0), 2e-6, 240, 120, 120, 120);
    }

    private static Weighing weighing(Scale scale, double splashKg, double bucketM3) {
        return new Weighing(scale, new Air(20, 98_190, 50), 0.058, splashKg, bucketM3);
    }

    private static MadeUpTest test(Method method, Timing timing, double lineM3, double... seconds) {
        Bench bench = new Bench(method, timing, new Thermometer(certificate("T-1"), 0.5), lineM3, 1);
        Declared declared = new Declared(
                new FlowRange(gpm(0.1), gpm(5)),
                new FlowRange(gpm(1), gpm(4)),
                List.of(WorkingFlow.of(WORKING)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        TrueMeter meter = new TrueMeter(KFactor.ofPulsesPerUsGallon(3017.4), gpm(0.0039));
        List<PlannedFlow> flows = IntStream.range(0, SET_GPM.length)
                .mapToObj(i -> new PlannedFlow(gpm(SET_GPM[i]), seconds[i], SCATTER[i]))
                .toList();
        return new MadeUpTest(bench, declared, meter, flows, 5);
    }

    private static Certificate certificate(String number) {
        return new Certificate(number, Optional.of(LocalDate.of(2025, 12, 1)), Optional.of(LocalDate.of(2026, 12, 1)));
    }

    private static FlowRate gpm(double gallonsPerMinute) {
        return FlowRate.ofGallonsPerMinute(gallonsPerMinute);
    }
}
