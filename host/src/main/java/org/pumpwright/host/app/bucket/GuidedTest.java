package org.pumpwright.host.app.bucket;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.calibrate.Leg;
import org.pumpwright.host.calibrate.Reading;
import org.pumpwright.host.calibrate.Run;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.StopRules;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.PlanRun;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Ending;

/**
 * A bucket test guided on a stand: for each duty and run the bucket is weighed, the flow brought to rest, the diverter swung in and out, and
 * the bucket weighed again, with the stand safe while hands are at the bucket. Each run is a run like every other, with its stop rules and its
 * one path to safe. What was measured is in the sheet of runs at once; a test that is cut short goes on from there, typed. Confined to the run
 * thread, but for {@link #stopNow}.
 */
final class GuidedTest {
    static final String HEAD = "run,flow_gpm,leg,tare_g,gross_g,pulses,time_s,water_c,left_out";

    private static final double LONGEST_SECONDS = 900;
    private static final double RAMP_SECONDS = 1;
    private static final double AMPS = 28;
    private static final double PRESSURE_PSI = 120;
    private static final double LEAST_PULSES = 1000;
    private static final double GRAM = 1e-3;
    private static final Duration WAIT = Duration.ofMillis(100);

    private final Order order;
    private final Stand stand;
    private final Operator person;
    private final Optional<ReadScale> scale;
    private final TestWatcher watcher;
    private final StopButton outer;
    private final Path sheet;
    private final List<Run> runs = new ArrayList<>();
    private final Map<Integer, Integer> lines = new HashMap<>();
    private volatile @Nullable StopButton current;

    /**
     * What is to be done.
     *
     * @param duties in their order, one flow each
     * @param runs at each
     * @param seconds least length of a run
     * @param drive that feeds the meter
     * @param meter under test
     * @param bucketM3 what the bucket holds
     * @param celsius of the water where the stand has no thermometer
     */
    record Order(List<Duty> duties, int runs, double seconds, int drive, int meter, double bucketM3, double celsius) {
        public Order {
            duties = List.copyOf(duties);
        }
    }

    /**
     * A test that has not begun.
     *
     * @param stand opened
     * @param person answers at the stand
     * @param scale read over a line; empty where weights are typed
     * @param watcher hears how it goes
     * @param outer pressed when the whole test is to end
     * @param sheet new file that the runs are written into, each at once
     */
    GuidedTest(
            Order order,
            Stand stand,
            Operator person,
            Optional<ReadScale> scale,
            TestWatcher watcher,
            StopButton outer,
            Path sheet) {
        this.order = order;
        this.stand = stand;
        this.person = person;
        this.scale = scale;
        this.watcher = watcher;
        this.outer = outer;
        this.sheet = sheet;
    }

    /** Asks the board for safe at once, from any thread; the run under way then ends by the stop that was pressed. */
    void stopNow() {
        StopButton running = current;
        if (running != null) {
            running.press(outer.pressed().orElse("the test was ended"));
        }
    }

    /**
     * Carries the test out.
     *
     * @throws OrderException when the sheet can't be written, or what was read can't be
     * @throws StandException when the test was cut short; the message names the sheet with the runs until then
     */
    SheetFile.Runs carryOut() throws OrderException, StandException {
        begin();
        for (Duty duty : order.duties()) {
            Optional<FlowRate> set = Optional.empty();
            for (int i = 0; i < order.runs(); i++) {
                watcher.says("Run %d of %d, duty %s."
                        .formatted(runs.size() + 1, order.duties().size() * order.runs(), duty.print()));
                watcher.began(runs.size() + 1, duty);
                Run run = run(duty, set);
                set = Optional.of(run.set());
                keep(run);
                watcher.kept(run);
            }
        }
        return done();
    }

    SheetFile.Runs done() throws OrderException {
        try {
            return new SheetFile.Runs(
                    runs, lines, SheetFile.source(sheet.getFileName().toString(), Files.readAllBytes(sheet)));
        } catch (IOException e) {
            throw new OrderException("%s can't be read again: %s".formatted(sheet, e.getMessage()));
        }
    }

    private Run run(Duty duty, Optional<FlowRate> set) throws OrderException, StandException {
        double tare = weigh("tare", "Weigh the empty, drained bucket");
        Channels channels = stand.description().channels().withFlowMeter(order.meter());
        StopButton stop = new StopButton();
        DiverterSwing swing = new DiverterSwing(
                channels,
                new DiverterSwing.Target(order.seconds(), LEAST_PULSES, order.bucketM3()),
                person,
                stop,
                outer,
                watcher);
        current = stop;
        // Pressed since the weight was given: then nobody knew this run's button yet, and the stand must not even be
        // armed.
        outer.pressed().ifPresent(stop::press);
        RunOutcome outcome = new PlanRun(stand, plan(duty), event -> {}, stop, Operator.NOBODY, swing).carryOut();
        current = null;
        if (swing.in().isEmpty() || swing.out().isEmpty()) {
            throw cutShort(outcome);
        }
        watcher.says("The stand is safe.");
        double gross = weigh("gross", "Let it drip, then weigh the full bucket");
        DiverterSwing.Moment in = swing.in().get();
        DiverterSwing.Moment out = swing.out().get();
        double seconds = out.seconds() - in.seconds();
        double pulses = out.pulses() - in.pulses();
        try {
            return new Run(
                    runs.size() + 1,
                    set.orElse(channels.flowMeter().flow(pulses / seconds)),
                    Leg.MAIN,
                    pulses,
                    seconds,
                    swing.celsius().orElse(order.celsius()),
                    new Reading.Weights(tare * GRAM, gross * GRAM),
                    Optional.empty());
        } catch (IllegalArgumentException e) {
            throw new OrderException("run %d: %s. Runs before it: %d, kept in %s."
                    .formatted(runs.size() + 1, e.getMessage(), runs.size(), sheet));
        }
    }

    private Plan plan(Duty duty) {
        Hold hold = new Hold(
                "bucket", org.pumpwright.host.plan.Reading.NOTHING, duty, LONGEST_SECONDS, RAMP_SECONDS, 1, 0, 0);
        return new Plan(
                "bucket",
                1,
                "Bucket test",
                order.drive() == 0 ? UnitKind.PUMP_12V : UnitKind.HYDRAULIC_PUMP,
                false,
                new Plan.Wiring(order.drive(), order.meter()),
                List.of(hold),
                List.of(),
                new StopRules(AMPS, 0.2, 0, Pressure.ofPsi(PRESSURE_PSI).pascals(), LONGEST_SECONDS + 30));
    }

    private StandException cutShort(RunOutcome outcome) {
        Ending ending = outcome.ending();
        String reason = outer.pressed().orElse(ending.reason());
        return ended(
                ending.kind() == Ending.Kind.STAND_LOST ? Trouble.LINK_LOST : Trouble.INTERRUPTED,
                "run %d was cut short: %s. %s."
                        .formatted(
                                runs.size() + 1, reason, capital(outcome.safe().words())));
    }

    /** The test is over before its time; what was measured can be gone on with. */
    private StandException ended(Trouble trouble, String why) {
        return new StandException(
                trouble,
                stand.description().id(),
                "%s Runs before it: %d, kept in %s. Go on with 'pumpwright bucket --typed %s --bench ...'."
                        .formatted(why, runs.size(), sheet, sheet));
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** A weight in grams: from the scale after Enter, or typed. The link is kept alive meanwhile; the stand is safe. */
    private double weigh(String name, String words) throws StandException {
        boolean read = scale.isPresent();
        while (true) {
            watcher.says(words
                    + (read
                            ? ", wait until it stands still, and press Enter; or type the grams."
                            : " and type the grams."));
            person.ask(DiverterSwing.question(name));
            String typed = await();
            Optional<Double> grams = read && typed.isBlank() ? shown(scale.get()) : grams(typed);
            if (grams.isPresent()) {
                return grams.get();
            }
        }
    }

    /**
     * What the scale shows; empty, and told, when it does not come to rest or its line is lost: then the weight is asked for again and
     * may be typed, for what was weighed until now must not be lost by a loose plug.
     */
    private Optional<Double> shown(ReadScale scale) {
        try {
            double grams = scale.steadyKilograms(() -> outer.pressed().isPresent()) / GRAM;
            watcher.says(String.format(Locale.ROOT, "The scale shows %.1f g.", grams));
            watcher.scaleShows(grams);
            return Optional.of(grams);
        } catch (OrderException | StandException e) {
            watcher.says(String.valueOf(e.getMessage()));
            watcher.scaleFails(String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    private Optional<Double> grams(String typed) {
        if (typed.contains(",")) {
            watcher.says("Write decimals with a point: " + typed.replace(',', '.'));
            return Optional.empty();
        }
        try {
            double grams = Double.parseDouble(typed.strip());
            if (grams >= 0 && grams < 1e7) {
                return Optional.of(grams);
            }
        } catch (NumberFormatException e) {
            watcher.says("'%s' is no number of grams.".formatted(typed));
            return Optional.empty();
        }
        watcher.says("'%s' is no number of grams from 0 up.".formatted(typed));
        return Optional.empty();
    }

    private String await() throws StandException {
        while (true) {
            Optional<String> why = outer.pressed();
            if (why.isPresent()) {
                throw ended(Trouble.INTERRUPTED, "the test was ended: %s.".formatted(why.get()));
            }
            try {
                stand.await(WAIT);
            } catch (StandException e) {
                throw ended(e.trouble(), e.getMessage());
            }
            Optional<String> answer = person.answer();
            if (answer.isPresent()) {
                return answer.get();
            }
        }
    }

    private void begin() throws OrderException {
        try {
            Path folder = sheet.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Files.writeString(sheet, HEAD + "\n", StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        } catch (IOException e) {
            throw new OrderException(
                    "%s can't be written: %s. Choose another folder: --records PATH".formatted(sheet, e.getMessage()));
        }
    }

    private void keep(Run run) throws OrderException {
        runs.add(run);
        lines.put(run.number(), runs.size() + 1);
        Reading.Weights weights = (Reading.Weights) run.reading();
        String line = String.format(
                Locale.ROOT,
                "%d,%.4f,main,%.1f,%.1f,%.3f,%.3f,%.2f,%n",
                run.number(),
                run.set().gallonsPerMinute(),
                weights.tareKg() / GRAM,
                weights.grossKg() / GRAM,
                run.pulses(),
                run.seconds(),
                run.liquidCelsius());
        try {
            Files.writeString(sheet, line, StandardCharsets.UTF_8, StandardOpenOption.APPEND, StandardOpenOption.SYNC);
        } catch (IOException e) {
            throw new OrderException(
                    "%s can't be written: %s. Its last run was: %s".formatted(sheet, e.getMessage(), line.strip()));
        }
    }
}
