package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.StandAtRestChecks;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.RunEvent;
import org.pumpwright.host.run.RunEvent.Answered;
import org.pumpwright.host.run.RunEvent.Asked;
import org.pumpwright.host.run.RunEvent.Began;
import org.pumpwright.host.run.RunEvent.Ended;
import org.pumpwright.host.run.RunEvent.Live;
import org.pumpwright.host.run.RunEvent.LiveValues;
import org.pumpwright.host.run.RunEvent.NotAnAnswer;
import org.pumpwright.host.run.RunEvent.PointDone;
import org.pumpwright.host.run.RunEvent.Rested;
import org.pumpwright.host.run.RunEvent.StepBegan;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.Trace;

/** Shows a run in the terminal: a line for each finished point, and a line of live values that is written over. */
final class Progress implements RunWatcher {
    private static final int LINE = 79;

    private final PrintWriter out;
    private final UnitSystem units;
    private final boolean live;
    private final StopButton stop;
    private @Nullable HealthyCurve curve;
    private @Nullable StandExpectations expected;

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
    public void begins(Plan plan, Optional<HealthyCurve> against, StandExpectations stand) {
        expected = stand;
        curve = against.orElse(null);
        out.println(plan.title() + " (" + plan.label() + ").");
        out.println(against.map(c -> "Held against the healthy curve " + c.label() + ".")
                .orElse("Nothing is judged: there is no healthy curve for this."));
    }

    @Override
    public void heard(RunEvent event) {
        if (event instanceof Live now && live) {
            overwrite(now);
        } else if (!(event instanceof Live)) {
            erase();
            say(event);
        }
        // A closed terminal does not end the process: the serial library makes it deaf to that signal.
        if (out.checkError()) {
            stop.press("the terminal was closed");
        }
    }

    private void say(RunEvent event) {
        if (event instanceof Began began) {
            out.printf(Locale.ROOT, "Armed. %d points, at least %.0f s.%n", began.points(), began.expectedSeconds());
        } else if (event instanceof Rested rested) {
            out.println("Stand: " + ticks(rested.atRest()));
        } else if (event instanceof StepBegan begun) {
            out.println();
            out.println("Step " + begun.step().name());
            if (begun.step() instanceof Sweep) {
                out.println("  point  leg     duty         flow            amps   volts    healthy flow");
            }
        } else if (event instanceof PointDone done) {
            out.println(line(done));
        } else if (event instanceof Asked asked) {
            ask(asked.question());
        } else if (event instanceof NotAnAnswer not) {
            out.println("'" + not.given() + "' is no answer to that: " + words(not.question()));
        } else if (event instanceof Answered answered) {
            out.println("Answer: " + answered.word());
        } else if (event instanceof Ended ended) {
            out.println();
            out.println("Run over: " + sentence(ended.ending().reason()));
            out.println("Stand: " + ended.safe().words() + ".");
        }
    }

    private String ticks(Trace atRest) {
        StandExpectations stand = expected;
        return stand == null
                ? ""
                : StandAtRestChecks.of(atRest, stand).stream()
                        .map(check -> check.name() + (check.ok() ? " ok" : " NOT OK (" + check.finding() + ")"))
                        .collect(Collectors.joining(", "));
    }

    private void ask(Ask question) {
        out.println(question.question());
        out.println("Type " + words(question) + " and Enter.");
    }

    private static String words(Ask question) {
        return question.answers().stream().map(Ask.Answer::word).collect(Collectors.joining(" or "));
    }

    private static String sentence(String words) {
        return words.endsWith(".") ? words : words + ".";
    }

    private String line(PointDone done) {
        String note = (done.settled() ? "" : "   not settled") + (done.enoughPulses() ? "" : "   too few pulses");
        return String.format(
                        Locale.ROOT,
                        "  %5d  %-6s %5s %s   %s%s",
                        done.point().number(),
                        leg(done.point().leg()),
                        done.point().duty().print(),
                        values(done.mean()),
                        band(done.point().duty(), done.mean()),
                        note)
                .stripTrailing();
    }

    private void overwrite(Live now) {
        String text = String.format(
                Locale.ROOT,
                "  %3d %-6s %5s %s %s %.0f s left",
                now.where().part(),
                now.phase() == RunEvent.Phase.RESTING ? "rest" : leg(now.where().leg()),
                now.where().duty().print(),
                values(now.now()),
                band(now.where().duty(), now.now()),
                now.secondsLeft());
        out.print("\r" + pad(text) + "\r");
    }

    private static String leg(Leg leg) {
        return leg.name().toLowerCase(Locale.ROOT);
    }

    private String values(LiveValues values) {
        String uncertainty = Double.isFinite(values.flowUncertainty())
                ? String.format(Locale.ROOT, "\u00b1%.2f %%", 100 * values.flowUncertainty())
                : "";
        return String.format(
                Locale.ROOT,
                "%14s %-8s %6.2f A %5.2f V",
                values.flow().print(units),
                uncertainty,
                values.supplyAmps(),
                values.voltsAtPins());
    }

    /** Where the healthy flow lies at these volts, and whether this one lies there. */
    private String band(Duty duty, LiveValues values) {
        HealthyCurve healthy = curve;
        if (healthy == null || duty.equals(Duty.ZERO)) {
            return "";
        }
        double volts =
                duty.fraction() * values.voltsAtPins() - (1 - duty.fraction()) * healthy.freewheelVolts();
        Band band = healthy.flow(volts);
        double flow = values.flow().m3PerSecond();
        String place = flow < band.low() ? "low" : flow > band.high() ? "high" : "ok";
        String low = new FlowRate(band.low()).print(units);
        return low.substring(0, low.indexOf(' ')) + " to " + new FlowRate(band.high()).print(units) + " " + place;
    }

    private void erase() {
        if (live) {
            out.print("\r" + pad("") + "\r");
        }
    }

    private static String pad(String text) {
        return text.length() > LINE ? text.substring(0, LINE) : text + " ".repeat(LINE - text.length());
    }
}
