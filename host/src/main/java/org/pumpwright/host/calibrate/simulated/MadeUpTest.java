package org.pumpwright.host.calibrate.simulated;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.calibrate.Bench;
import org.pumpwright.host.calibrate.BucketTest;
import org.pumpwright.host.calibrate.Declared;
import org.pumpwright.host.calibrate.Leg;
import org.pumpwright.host.calibrate.Reading;
import org.pumpwright.host.calibrate.Rules;
import org.pumpwright.host.calibrate.Run;
import org.pumpwright.host.calibrate.fluid.Water;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;

/**
 * Makes bucket tests up. Errors that the flows of a test share are drawn once a test, those of a flow once a flow, and scatter,
 * the rounding of a scale and the phase of a pulse once a run. Confined to one thread.
 */
public final class MadeUpTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final double SET_NEARNESS = 0.02;
    private static final double MEAN_CELSIUS = 18;
    private static final double CELSIUS_HALF_WIDTH = 6;

    private final Bench bench;
    private final Declared declared;
    private final TrueMeter meter;
    private final List<PlannedFlow> flows;
    private final int runsPerFlow;

    /**
     * A kind of test.
     *
     * @param bench what it is made with, and so what its errors are drawn from
     * @param declared about the meter
     * @param meter the truth
     * @param flows that are set
     * @param runsPerFlow at each
     */
    public MadeUpTest(Bench bench, Declared declared, TrueMeter meter, List<PlannedFlow> flows, int runsPerFlow) {
        this.bench = bench;
        this.declared = declared;
        this.meter = meter;
        this.flows = List.copyOf(flows);
        this.runsPerFlow = runsPerFlow;
    }

    public Bench bench() {
        return bench;
    }

    public TrueMeter meter() {
        return meter;
    }

    public List<PlannedFlow> flows() {
        return flows;
    }

    /** One test; the same seed gives the same test. */
    public BucketTest draw(long seed) {
        Dice dice = new Dice(seed);
        double celsius = MEAN_CELSIUS + dice.flat(CELSIUS_HALF_WIDTH);
        TestErrors test = TestErrors.draw(bench, celsius, dice);
        List<Run> runs = new ArrayList<>();
        for (PlannedFlow flow : flows) {
            FlowErrors ofFlow = FlowErrors.draw(bench, dice);
            for (int i = 0; i < runsPerFlow; i++) {
                runs.add(run(runs.size() + 1, flow, test, ofFlow, dice));
            }
        }
        return new BucketTest(DAY, bench, "water", Optional.of(Water.TAP), declared, runs, Rules.SHOP, UnitSystem.US);
    }

    private Run run(int number, PlannedFlow planned, TestErrors test, FlowErrors ofFlow, Dice dice) {
        double flow = planned.set().m3PerSecond() * (1 + dice.flat(SET_NEARNESS));
        double passed = flow * planned.seconds();
        double k = meter.at(new FlowRate(flow)).pulsesPerM3() * (1 + dice.normal(planned.scatterShare()));
        double counted = Math.floor(k * passed / bench.pulseStep() + dice.phase()) * bench.pulseStep();
        double excess = bench.timing().excessSeconds() + test.switchSeconds();
        double caught = flow * (planned.seconds() - excess) - ofFlow.lineM3();
        return new Run(
                number,
                planned.set(),
                Leg.MAIN,
                counted,
                planned.seconds(),
                test.celsius() - test.celsiusOff(),
                reading(flow, planned.seconds(), caught, test, ofFlow, dice),
                Optional.empty());
    }

    private Reading reading(double flow, double seconds, double caught, TestErrors test, FlowErrors ofFlow, Dice dice) {
        Instrument instrument = new Instrument(bench.method(), test, ofFlow, dice);
        return instrument.read(flow, seconds, caught);
    }
}
