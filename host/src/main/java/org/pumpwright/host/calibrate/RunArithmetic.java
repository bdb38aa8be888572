package org.pumpwright.host.calibrate;

import java.util.Optional;
import org.pumpwright.host.calibrate.fluid.Buoyancy;
import org.pumpwright.host.calibrate.fluid.Liquid;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Volume;

/** From the readings of one run to its K: {@code V = net (1 - a/8000) / (r - a)}, {@code K = N / V}. */
final class RunArithmetic {
    private RunArithmetic() {}

    static RunResult of(Run run, BucketTest test) {
        Method method = test.bench().method();
        if (method instanceof Weighing weighing && run.reading() instanceof Reading.Weights weights) {
            return weighed(run, weights, weighing, test.liquid().orElseThrow(), test.bench());
        }
        if (method instanceof Measuring vessel && run.reading() instanceof Reading.Level level) {
            double warm = 1 + vessel.expansionPerKelvin() * (run.liquidCelsius() - vessel.markedCelsius());
            return result(run, Optional.empty(), level.m3() * warm, test.bench());
        }
        if (method instanceof Comparing master && run.reading() instanceof Reading.MasterPulses counted) {
            FlowRate flow = master.k().flowAt(counted.pulses() / run.seconds());
            return result(run, Optional.empty(), flow.m3PerSecond() * run.seconds(), test.bench());
        }
        throw new IllegalArgumentException(
                "run %d has a reading that does not go with a %s".formatted(run.number(), method.words()));
    }

    private static RunResult weighed(Run run, Reading.Weights weights, Weighing weighing, Liquid liquid, Bench bench) {
        double air = weighing.air().kgPerM3();
        double density = liquid.kgPerM3(run.liquidCelsius());
        double buoyancy = Buoyancy.factor(air, density);
        double mass = weights.netKg() * buoyancy;
        RunResult.Weighed steps = new RunResult.Weighed(weights.netKg(), air, density, buoyancy, mass);
        return result(run, Optional.of(steps), mass / density, bench);
    }

    private static RunResult result(Run run, Optional<RunResult.Weighed> weighed, double m3, Bench bench) {
        double pulses = run.pulses() / (1 + bench.timing().excessShare(run.seconds()));
        return new RunResult(
                run, weighed, new Volume(m3), pulses, new FlowRate(m3 / run.seconds()), new KFactor(pulses / m3));
    }
}
