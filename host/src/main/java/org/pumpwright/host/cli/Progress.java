package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.RunEvent;
import org.pumpwright.host.run.RunEvent.Began;
import org.pumpwright.host.run.RunEvent.Ended;
import org.pumpwright.host.run.RunEvent.Live;
import org.pumpwright.host.run.RunEvent.LiveValues;
import org.pumpwright.host.run.RunEvent.PointDone;
import org.pumpwright.host.run.RunListener;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.trace.Leg;

/** Shows a run in the terminal: a line for each finished point, and a line of live values that is written over. */
final class Progress implements RunListener {
    private static final int LINE = 78;

    private final PrintWriter out;
    private final UnitSystem units;
    private final boolean live;
    private final StopButton stop;

    /**
     * Shows a run.
     *
     * @param live whether the line of live values is shown; it needs a terminal
     * @param stop pressed when nobody can see the run any more
     */
    Progress(PrintWriter out, UnitSystem units, boolean live, StopButton stop) {
        this.stop = stop;
        this.out = out;
        this.units = units;
        this.live = live;
    }

    @Override
    public void heard(RunEvent event) {
        if (event instanceof Began began) {
            out.printf(Locale.ROOT, "Armed. %d points, at least %.0f s.%n%n", began.points(), began.expectedSeconds());
            out.println("  point  leg     duty         flow     amps   volts at pins");
        } else if (event instanceof Live now && live) {
            overwrite(now);
        } else if (event instanceof PointDone done) {
            erase();
            out.println(line(done));
        } else if (event instanceof Ended ended) {
            erase();
            out.println();
            out.println("Run over: " + sentence(ended.ending().reason()));
            out.println("Stand: " + ended.safe().words() + ".");
        }
        // A closed terminal does not end the process: the serial library makes it deaf to that signal.
        if (out.checkError()) {
            stop.press("the terminal was closed");
        }
    }

    private static String sentence(String words) {
        return words.endsWith(".") ? words : words + ".";
    }

    private String line(PointDone done) {
        String note = (done.settled() ? "" : "   not settled") + (done.enoughPulses() ? "" : "   too few pulses");
        return String.format(
                        Locale.ROOT,
                        "  %5d  %-6s %5s %s%s",
                        done.point().number(),
                        done.point().leg().name().toLowerCase(Locale.ROOT),
                        done.point().duty().print(),
                        values(done.mean()),
                        note)
                .stripTrailing();
    }

    private void overwrite(Live now) {
        String text = String.format(
                Locale.ROOT,
                "  %5d  %-6s %5s %s   %s, %.0f s left",
                now.point().number(),
                now.phase() == RunEvent.Phase.RESTING ? "rest" : leg(now.point().leg()),
                now.point().duty().print(),
                values(now.now()),
                now.phase().name().toLowerCase(Locale.ROOT),
                now.secondsLeft());
        out.print("\r" + pad(text) + "\r");
    }

    private static String leg(Leg leg) {
        return leg.name().toLowerCase(Locale.ROOT);
    }

    private String values(LiveValues values) {
        return String.format(
                Locale.ROOT,
                "%14s %6.2f A %7.2f V",
                values.flow().print(units),
                values.supplyAmps(),
                values.voltsAtPins());
    }

    private void erase() {
        if (live) {
            out.print("\r" + pad("") + "\r");
        }
    }

    private static String pad(String text) {
        return text + " ".repeat(Math.max(0, LINE - text.length()));
    }
}
