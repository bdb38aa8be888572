package org.pumpwright.host.run;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/** Arms an opened stand, drives nothing, and records its zeros. Confined to the run thread. */
public final class StandAtRest {
    private static final double CONTACTOR_SECONDS = 0.2;
    private static final Duration WAIT = Duration.ofMillis(100);

    private StandAtRest() {}

    /**
     * Records the stand at rest for a while.
     *
     * @param seconds how long
     * @throws StandException when the stand is lost or refuses to arm; the path to safe has been taken then too
     */
    public static RunOutcome record(Stand stand, double seconds) throws StandException {
        return record(stand, seconds, new StopButton(), sample -> {});
    }

    /**
     * The same, but it can be stopped, and watched.
     *
     * @param stop may be pressed from any thread
     * @param heard takes each sample; must return soon
     */
    public static RunOutcome record(Stand stand, double seconds, StopButton stop, Consumer<Sample> heard)
            throws StandException {
        stop.connect(stand);
        List<Sample> samples = new ArrayList<>();
        Ending ending = new Ending(Ending.Kind.COMPLETED, "the stand was watched at rest");
        SafeState safe;
        try {
            // Pressed before: nothing is armed. Pressed while it is armed: seen at the first look, and safe again.
            if (stop.pressed().isEmpty()) {
                stand.arm();
                Optional<MadeSafe> made = collect(stand, samples, seconds, stop, heard);
                if (made.isPresent()) {
                    ending = new Ending(Ending.Kind.STOPPED_BY_BOARD, made.get().words());
                }
            }
        } catch (StandException e) {
            // A stop while the stand arms shows as a refusal.
            if (stop.pressed().isEmpty()) {
                throw e;
            }
        } finally {
            safe = SafePath.take(stand);
        }
        if (stop.pressed().isPresent()) {
            ending = new Ending(Ending.Kind.STOPPED_BY_PERSON, stop.pressed().get());
        }
        if (safe == SafeState.LOCKED) {
            ending = new Ending(Ending.Kind.STAND_UNFIT, "the board locked itself: the contactor may be stuck");
        }
        Trace trace = new Trace(stand.description().channels(), samples, List.of());
        return new RunOutcome(trace, ending, safe, SampleGaps.lost(trace));
    }

    private static Optional<MadeSafe> collect(
            Stand stand, List<Sample> samples, double seconds, StopButton stop, Consumer<Sample> heard)
            throws StandException {
        double begin = -1;
        while (stop.pressed().isEmpty()) {
            Optional<StandSignal> signal = stand.await(WAIT);
            if (signal.isPresent() && signal.get() instanceof MadeSafe made) {
                return Optional.of(made);
            }
            if (signal.isPresent() && signal.get() instanceof Measured measured) {
                double now = measured.sample().boardSeconds();
                begin = begin < 0 ? now : begin;
                heard.accept(measured.sample());
                if (now - begin >= CONTACTOR_SECONDS) {
                    samples.add(measured.sample());
                }
                if (now - begin >= CONTACTOR_SECONDS + seconds) {
                    return Optional.empty();
                }
            }
        }
        return Optional.empty();
    }
}
