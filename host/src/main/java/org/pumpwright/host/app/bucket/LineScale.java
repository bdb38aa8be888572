package org.pumpwright.host.app.bucket;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.wire.Line;

/**
 * A scale on a byte line that sends its reading as text, over and over. What it said before it was asked for is passed over. Confined
 * to the run thread.
 */
public final class LineScale implements ReadScale, AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Duration A_MOMENT = Duration.ofMillis(100);
    private static final int LONGEST_LINE = 200;

    private final Line line;
    private final ScaleSettings settings;
    private final StringBuilder heard = new StringBuilder();
    private String strange = "";

    /** A scale at the other end of a line, by its settings. */
    public LineScale(Line line, ScaleSettings settings) {
        this.line = line;
        this.settings = settings;
    }

    /**
     * The same for somebody who does not give up.
     *
     * @throws OrderException when it does not come to rest, or sends what the settings do not describe
     * @throws StandException when the line is lost
     */
    public double steadyKilograms() throws OrderException, StandException {
        return steadyKilograms(() -> false);
    }

    @Override
    public double steadyKilograms(BooleanSupplier over) throws OrderException, StandException {
        passOver();
        List<Double> steady = new ArrayList<>();
        long until = line.nanoTime() + PATIENCE.toNanos();
        while (line.nanoTime() < until) {
            if (over.getAsBoolean()) {
                throw new OrderException("%s: the reading is no longer wanted.".formatted(line.name()));
            }
            for (String said : lines()) {
                Optional<ScaleSettings.Said> reading = settings.read(said);
                if (reading.isEmpty()) {
                    strange = said;
                    continue;
                }
                if (!reading.get().steady()
                        || (!steady.isEmpty() && steady.get(0) != reading.get().kilograms())) {
                    steady.clear();
                }
                if (reading.get().steady()) {
                    steady.add(reading.get().kilograms());
                }
                if (steady.size() >= settings.readings()) {
                    return steady.get(0);
                }
            }
        }
        throw new OrderException(
                "%s: no %d steady readings that agree within %d s%s. Let it stand still, out of the wind."
                        .formatted(
                                line.name(),
                                settings.readings(),
                                PATIENCE.toSeconds(),
                                strange.isEmpty()
                                        ? ""
                                        : "; it said '" + strange + "', which the pattern does not describe"));
    }

    private void passOver() throws StandException {
        byte[] old = new byte[4096];
        while (line.receive(old, Duration.ZERO) > 0) {
            heard.setLength(0);
        }
        heard.setLength(0);
        strange = "";
        // The rest of a line that had begun before is no reading.
        lines();
    }

    private List<String> lines() throws StandException {
        byte[] bytes = new byte[512];
        int count = line.receive(bytes, A_MOMENT);
        heard.append(new String(bytes, 0, count, StandardCharsets.US_ASCII));
        List<String> lines = new ArrayList<>();
        int end = heard.indexOf(settings.lineEnd());
        while (end >= 0) {
            lines.add(heard.substring(0, end));
            heard.delete(0, end + settings.lineEnd().length());
            end = heard.indexOf(settings.lineEnd());
        }
        if (heard.length() > LONGEST_LINE) {
            heard.setLength(0);
        }
        return lines;
    }

    @Override
    public void close() {
        line.close();
    }
}
