package org.pumpwright.host.app.bucket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.Sample;

/** One run of a guided bucket test, fed with made samples: 50 pulses a second, 1000 pulses to the litre. */
final class DiverterSwingTest {
    private static final double HERTZ = 50;
    private static final double STEP_SECONDS = 0.01;

    private final StopButton stop = new StopButton();
    private final StopButton outer = new StopButton();
    private final Prompt person = new Prompt();

    /** Answers as soon as he is asked, once. */
    private static final class Prompt implements Operator {
        private final List<String> asked = new ArrayList<>();
        private boolean open;

        @Override
        public boolean isThere() {
            return true;
        }

        @Override
        public void ask(Ask question) {
            asked.add(question.name());
            open = true;
        }

        @Override
        public Optional<String> answer() {
            boolean was = open;
            open = false;
            return was ? Optional.of("") : Optional.empty();
        }

        @Override
        public boolean wantsPause() {
            return false;
        }
    }

    @Test
    void pulsesBetweenTheTwoMomentsAreCountedToAPartOfAPulse() {
        DiverterSwing swing = swing(20, 19);
        run(swing, 40, Double.POSITIVE_INFINITY);

        assertThat(person.asked).containsExactly("swing-in", "swing-out");
        assertThat(stop.pressed()).contains(DiverterSwing.DONE);
        DiverterSwing.Moment in = swing.in().orElseThrow();
        DiverterSwing.Moment out = swing.out().orElseThrow();
        double seconds = out.seconds() - in.seconds();
        assertThat(seconds).isBetween(20.0, 20.1);
        assertThat(out.pulses() - in.pulses()).isCloseTo(HERTZ * seconds, within(0.02));
    }

    @Test
    void aMeterThatFallsSilentEndsTheRun() {
        DiverterSwing swing = swing(20, 19);
        run(swing, 40, 12);

        assertThat(swing.out()).isEmpty();
        assertThat(stop.pressed())
                .contains("the meter has given no pulse for 5 s: check its plug and supply, and that water flows");
    }

    @Test
    void aBucketThatWouldRunOverEndsTheRun() {
        DiverterSwing swing = swing(60, 0.5);
        run(swing, 40, Double.POSITIVE_INFINITY);

        assertThat(swing.in()).isPresent();
        assertThat(swing.out()).isEmpty();
        assertThat(stop.pressed().orElseThrow()).startsWith("the bucket would run over: 0.5 L are in it by the meter");
    }

    @Test
    void whoeverStopsTheTestStopsTheRun() {
        DiverterSwing swing = swing(20, 19);
        outer.press("somebody shouted");
        run(swing, 0.1, Double.POSITIVE_INFINITY);

        assertThat(stop.pressed()).contains("somebody shouted");
    }

    private DiverterSwing swing(double seconds, double litres) {
        MeterChannel meter = new MeterChannel(
                0, KCurve.constant(new KFactor(1e6)), 0.005, new FlowRate(0), Certificate.undated("none"));
        return new DiverterSwing(
                new Channels(List.of(meter), List.of()),
                new DiverterSwing.Target(seconds, 500, litres / 1000),
                person,
                stop,
                outer,
                new TestWatcher() {
                    @Override
                    public void says(String words) {}

                    @Override
                    public void live(double at, double pulses, double m3) {}
                });
    }

    private static void run(DiverterSwing swing, double seconds, double pulsesUntil) {
        for (int i = 1; i * STEP_SECONDS <= seconds; i++) {
            double now = i * STEP_SECONDS;
            long edges = (long) Math.floor(Math.min(now, pulsesUntil) * HERTZ + 1e-9);
            swing.sample(new Sample(
                    Math.round(now * 1e9),
                    List.of(new Sample.MeterCount(edges, Math.round(edges / HERTZ * 1e9))),
                    List.of(),
                    List.of(Duty.ofPercent(50)),
                    true,
                    true,
                    true));
        }
    }
}
