package org.pumpwright.host.calibrate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.calibrate.fluid.Air;
import org.pumpwright.host.calibrate.fluid.Water;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.UnitSystem;

/** A small meter of about 3000 pulses per gallon, a bench scale of 30 kg by 2 g, water at 18.4 degrees Celsius, five runs at four flows. */
final class WorkedExample {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static final double[] SET_GPM = {0.25, 1, 2, 4};
    private static final double[] SECONDS = {121, 120, 120, 60};
    private static final double[][] NET_GRAMS = {
        {1897, 1902, 1894, 1899, 1905},
        {7581, 7569, 7590, 7577, 7585},
        {15112, 15096, 15131, 15104, 15120},
        {15140, 15118, 15102, 15127, 15133}
    };
    private static final double[][] PULSES = {
        {1491, 1499, 1492, 1491, 1496},
        {6030, 6028, 6041, 6036, 6025},
        {12069, 12034, 12072, 12040, 12049},
        {12085, 12072, 12045, 12066, 12082}
    };

    private WorkedExample() {}

    static Certificate certificate(String number) {
        return new Certificate(number, Optional.of(DAY.minusMonths(3)), Optional.of(DAY.plusMonths(9)));
    }

    static Scale scale() {
        return new Scale(certificate("S-1"), 0.004, 2, 0.004, 0.002, 0.003, 30);
    }

    static Bench bench() {
        return bench(new Weighing(scale(), new Air(20, 98_190, 50), 0.058, 0.004, 0.019));
    }

    static Bench bench(Method method) {
        return new Bench(method, new Timing(Start.FLYING, 0, 0.025), new Thermometer(certificate("T-1"), 0.5), 3e-6, 1);
    }

    static List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (int flow = 0; flow < SET_GPM.length; flow++) {
            for (int i = 0; i < 5; i++) {
                Reading reading = new Reading.Weights(0.9, 0.9 + NET_GRAMS[flow][i] / 1000);
                runs.add(new Run(
                        runs.size() + 1,
                        gpm(SET_GPM[flow]),
                        Leg.MAIN,
                        PULSES[flow][i],
                        SECONDS[flow],
                        18.4,
                        reading,
                        Optional.empty()));
            }
        }
        return runs;
    }

    static Declared declared() {
        return declared(Optional.empty());
    }

    static Declared declared(Optional<KFactor> previous) {
        return new Declared(
                new FlowRange(gpm(0.1), gpm(5)),
                new FlowRange(gpm(1), gpm(4)),
                List.of(WorkingFlow.of(gpm(1)), WorkingFlow.of(gpm(2)), WorkingFlow.of(gpm(4))),
                Optional.empty(),
                previous,
                Optional.empty());
    }

    static BucketTest test() {
        return with(runs());
    }

    static BucketTest with(List<Run> runs) {
        return with(bench(), declared(), runs, Rules.SHOP);
    }

    static BucketTest with(Bench bench, Declared declared, List<Run> runs, Rules rules) {
        return new BucketTest(DAY, bench, "water", Optional.of(Water.TAP), declared, runs, rules, UnitSystem.US);
    }

    static FlowRate gpm(double gallonsPerMinute) {
        return FlowRate.ofGallonsPerMinute(gallonsPerMinute);
    }
}
