package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.EarlierRuns;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.StandAtRestChecks;
import org.pumpwright.host.grade.StandCheck;
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

/**
 * Shows a run in a terminal of 80 columns: a line for each finished point, and a line of live values that is written over.
 * Confined to the run thread.
 */
final class Progress implements RunWatcher {
    /** Point, leg, duty, flow, its uncertainty, amps, volts, healthy flow. */
    private static final String ROW = "%5s  %-6s %6s  %7s %7s  %6s  %5s  %s";

    /** A flow that is known worse than this is not known. */
    private static final double MOST_SHARE_SHOWN = 1;

    private static final double LEAST_SHARE_SHOWN = 0.0001;

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
        out.println(WrappedText.of(plan.title() + " (" + plan.label() + ").", 2));
        out.println(against.map(c -> "Held against the healthy curve " + c.label() + ".")
                .orElse("Nothing is judged: there is no healthy curve for this."));
    }

    @Override
    public void counts(EarlierRuns earlier) {
        if (earlier.attempt() > 1) {
            out.println(WrappedText.of(
                    "Run %s of this unit, of at most %s; before it %s."
                            .formatted(earlier.attempt(), earlier.most(), earlier.words()),
                    2));
        }
        earlier.decision()
                .ifPresent(decision -> out.println(
                        WrappedText.of("Decided by " + decision.by() + ": " + sentence(decision.reason()), 2)));
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
            stand(rested.atRest());
        } else if (event instanceof StepBegan begun) {
            out.println();
            out.println("Step " + begun.step().name());
            if (begun.step() instanceof Sweep) {
                out.println(header());
            }
        } else if (event instanceof PointDone done) {
            point(done);
        } else if (event instanceof Asked asked) {
            ask(asked.question());
        } else if (event instanceof NotAnAnswer not) {
            out.println("'" + not.given() + "' is no answer to that.");
            ask(not.question());
        } else if (event instanceof Answered answered) {
            out.println("Answer: " + answered.word());
        } else if (event instanceof Ended ended) {
            out.println();
            out.println(WrappedText.of("Run over: " + sentence(ended.ending().reason()), 2));
            out.println(WrappedText.of("Stand: " + ended.safe().words() + ".", 2));
        }
    }

    /** What is in order stands in one line, each trouble in a line of its own. */
    private void stand(Trace atRest) {
        StandExpectations stand = expected;
        if (stand == null) {
            return;
        }
        List<StandCheck> checks = StandAtRestChecks.of(atRest, stand);
        String fine = checks.stream()
                .filter(StandCheck::ok)
                .map(check -> check.name() + " ok")
                .collect(Collectors.joining(", "));
        out.println(WrappedText.of("Stand: " + fine, 2));
        checks.stream()
                .filter(check -> !check.ok())
                .forEach(check ->
                        out.println(WrappedText.of("Stand: " + check.name() + " NOT OK: " + check.finding(), 2)));
    }

    private void ask(Ask question) {
        out.println(WrappedText.of(question.question(), 2));
        out.println(WrappedText.of("Type " + words(question) + " and Enter.", 2));
    }

    private static String words(Ask question) {
        return question.answers().stream().map(Ask.Answer::word).collect(Collectors.joining(" or "));
    }

    private static String sentence(String words) {
        return words.endsWith(".") ? words : words + ".";
    }

    private String header() {
        String header = String.format(
                Locale.ROOT, ROW, "point", "leg", "duty", unit(), "\u00b1", "amps", "volts", "healthy flow");
        return live ? withLeft(header, "left") : header;
    }

    private static String withLeft(String row, String left) {
        return row + " ".repeat(Math.max(1, WrappedText.COLUMNS - row.length() - left.length())) + left;
    }

    private void point(PointDone done) {
        out.println(row(
                done.point().number(),
                leg(done.point().leg()),
                done.point().duty(),
                done.mean(),
                band(done.point().duty(), done.mean(), true)));
        String note = Stream.of(done.settled() ? "" : "not settled", done.enoughPulses() ? "" : "too few pulses")
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        if (!note.isEmpty()) {
            out.println("       " + note);
        }
    }

    /** While a point settles its flow lies anywhere, and that it does is no sign of anything. */
    private void overwrite(Live now) {
        boolean resting = now.phase() == RunEvent.Phase.RESTING;
        String row = row(
                now.where().part(),
                resting ? "rest" : leg(now.where().leg()),
                now.where().duty(),
                now.now(),
                band(now.where().duty(), now.now(), now.phase() == RunEvent.Phase.MEASURING));
        out.print("\r" + pad(withLeft(row, minutes(now.secondsLeft()))) + "\r");
    }

    private static String minutes(double seconds) {
        long whole = Math.max(0, Math.round(seconds));
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }

    private String row(int part, String leg, Duty duty, LiveValues values, String band) {
        return String.format(
                        Locale.ROOT,
                        ROW,
                        part,
                        leg,
                        duty.print(),
                        number(values.flow()),
                        uncertainty(values.flowUncertainty()),
                        String.format(Locale.ROOT, "%.2f", values.supplyAmps()),
                        String.format(Locale.ROOT, "%.2f", values.voltsAtPins()),
                        band)
                .stripTrailing();
    }

    private static String leg(Leg leg) {
        return leg.name().toLowerCase(Locale.ROOT);
    }

    private static String uncertainty(double share) {
        if (share >= MOST_SHARE_SHOWN) {
            return "";
        }
        return share < LEAST_SHARE_SHOWN ? "<0.01 %" : String.format(Locale.ROOT, "%.2f %%", 100 * share);
    }

    /** Where the healthy flow lies at these volts, and if asked whether this one lies there. */
    private String band(Duty duty, LiveValues values, boolean withPlace) {
        HealthyCurve healthy = curve;
        if (healthy == null || duty.equals(Duty.ZERO)) {
            return "";
        }
        double volts = duty.fraction() * values.voltsAtPins() - (1 - duty.fraction()) * healthy.freewheelVolts();
        Band band = healthy.flow(volts);
        String range = number(new FlowRate(band.low())) + " to " + number(new FlowRate(band.high()));
        if (!withPlace) {
            return range;
        }
        double flow = values.flow().m3PerSecond();
        return range + (flow < band.low() ? " low" : flow > band.high() ? " high" : " ok");
    }

    private String number(FlowRate flow) {
        String printed = flow.print(units);
        return printed.substring(0, printed.indexOf(' '));
    }

    private String unit() {
        String printed = new FlowRate(0).print(units);
        return printed.substring(printed.indexOf(' ') + 1);
    }

    private void erase() {
        if (live) {
            out.print("\r" + pad("") + "\r");
        }
    }

    private static String pad(String text) {
        return text.length() > WrappedText.COLUMNS
                ? text.substring(0, WrappedText.COLUMNS)
                : text + " ".repeat(WrappedText.COLUMNS - text.length());
    }
}
