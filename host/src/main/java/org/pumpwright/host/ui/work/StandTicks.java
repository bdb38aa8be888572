package org.pumpwright.host.ui.work;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.calibration.Certificate.Standing;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Sample;

/** The ticks of the strip, from what the stand says of itself. Thread-safe. */
final class StandTicks {
    /** How many there are while nothing unusual is to be told. */
    static final int COUNT = 6;

    private StandTicks() {}

    /** The window itself was held up. */
    static Tick screen(int millis) {
        return new Tick(Word.of("ui.tick.screen"), Mark.WATCH, Word.of("ui.tick.screen.held_up", millis));
    }

    /** While nothing is heard of the stand. */
    static List<Tick> unheard(Channels channels, LocalDate today, LinkState link) {
        Word unknown = Word.of("ui.tick.unknown");
        return List.of(
                tick(
                        "link",
                        link == LinkState.LOST ? Mark.BAD : Mark.UNKNOWN,
                        "ui.tick.link." + link.name().toLowerCase(Locale.ROOT)),
                new Tick(Word.of("ui.tick.emergency"), Mark.UNKNOWN, unknown),
                new Tick(Word.of("ui.tick.guard"), Mark.UNKNOWN, unknown),
                new Tick(Word.of("ui.tick.power"), Mark.UNKNOWN, unknown),
                new Tick(Word.of("ui.tick.sensors"), Mark.UNKNOWN, unknown),
                calibration(channels, today));
    }

    static List<Tick> heard(Channels channels, LocalDate today, Sample now) {
        return List.of(
                tick("link", Mark.GOOD, "ui.tick.link.ok"),
                input("emergency", now.emergencyStopClosed()),
                input("guard", now.guardClosed()),
                now.armed()
                        ? tick("power", Mark.WATCH, "ui.tick.power.armed")
                        : tick("power", Mark.GOOD, "ui.tick.power.safe"),
                sensors(channels, now),
                calibration(channels, today));
    }

    private static Tick input(String name, boolean closed) {
        return closed
                ? tick(name, Mark.GOOD, "ui.tick." + name + ".closed")
                : tick(name, Mark.BAD, "ui.tick." + name + ".open");
    }

    private static Tick sensors(Channels channels, Sample now) {
        long faulty = channels.analogs().stream()
                .filter(channel -> channel.trouble(now).isPresent())
                .count();
        return faulty == 0
                ? tick("sensors", Mark.GOOD, "ui.tick.sensors.ok")
                : new Tick(Word.of("ui.tick.sensors"), Mark.BAD, Word.of("ui.tick.sensors.faulty", faulty));
    }

    private static Tick calibration(Channels channels, LocalDate today) {
        List<Standing> all = ChannelWords.certificates(channels).stream()
                .map(each -> each.certificate().standing(today))
                .toList();
        if (all.contains(Standing.PAST_DUE)) {
            return tick("calibration", Mark.BAD, "ui.tick.calibration.past_due");
        }
        return all.contains(Standing.NOT_CALIBRATED)
                ? tick("calibration", Mark.WATCH, "ui.tick.calibration.missing")
                : tick("calibration", Mark.GOOD, "ui.tick.calibration.in_date");
    }

    private static Tick tick(String name, Mark mark, String state) {
        return new Tick(Word.of("ui.tick." + name), mark, Word.of(state));
    }
}
