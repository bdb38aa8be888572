package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.pumpwright.host.app.BucketCalibration;
import org.pumpwright.host.app.BucketGuide;
import org.pumpwright.host.app.BucketLineScale;
import org.pumpwright.host.app.BucketScaleSettings;
import org.pumpwright.host.app.BucketWatcher;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.serial.SerialPorts;

/** Has a bucket test guided on a stand while a person works at it, and can stop it with Ctrl-C. */
final class BucketDesk {
    private static final long PATIENCE_SECONDS = 3;

    private final Workshop workshop;
    private final PrintWriter out;
    private final BucketOptions papers;
    private final BucketStandOptions guided;
    private final BucketCalibration calibration;

    BucketDesk(
            Workshop workshop,
            PrintWriter out,
            BucketOptions papers,
            BucketStandOptions guided,
            BucketCalibration calibration) {
        this.workshop = workshop;
        this.out = out;
        this.papers = papers;
        this.guided = guided;
        this.calibration = calibration;
    }

    int carryOut(String stand) throws OrderException, DataFileException, StandException, RunRecordException {
        if (papers.bench == null) {
            throw new OrderException(
                    "--stand needs --bench FILE with scale, liquid and meter, such as fixtures/buckets/simulated-bench.yaml");
        }
        if (!papers.json) {
            out.println("Caution: this program is not a safety device. Know where the emergency stop is.");
            out.println("Hose and fittings tight, eye protection on, floor dry. Water only, no product.");
            out.println();
        }
        BucketGuide guide = new BucketGuide(workshop.shelf(), workshop.stands(), workshop.clock());
        StopButton stop = new StopButton();
        CountDownLatch done = new CountDownLatch(1);
        Runnable end = () -> stopAndWait(stop, guide, done);
        Thread hook = new Thread(end, "stop at the end of the process");
        Runtime.getRuntime().addShutdownHook(hook);
        workshop.stands().beforeProcessEnds(end);
        try {
            BucketGuide.Done test = guided(guide, stand, stop);
            if (!papers.json) {
                out.println();
                out.println("Runs           " + test.runs());
                out.println();
            }
            return BucketCommand.finish(workshop, out, papers, test.sheet(), calibration, test.simulated());
        } finally {
            done.countDown();
            workshop.stands().beforeProcessEnds(() -> {});
            forget(hook);
        }
    }

    private BucketGuide.Done guided(BucketGuide guide, String stand, StopButton stop)
            throws OrderException, DataFileException, StandException {
        TerminalOperator person = new TerminalOperator(workshop.typed(), workshop.livePerson(), Map.of(), stop);
        person.listen();
        BucketGuide.Order order = new BucketGuide.Order(
                stand,
                Optional.ofNullable(guided.port),
                Objects.requireNonNull(papers.bench),
                duties(),
                guided.runs,
                guided.seconds,
                guided.drive,
                guided.meter,
                guided.celsius,
                guided.seed,
                papers.records(workshop));
        if (guided.scale == null) {
            return guide.carryOut(order, Optional.empty(), person, watcher(), stop, papers.units);
        }
        BucketScaleSettings settings = BucketScaleSettings.read(guided.scale);
        String port = Optional.ofNullable(guided.scalePort)
                .or(settings::port)
                .orElseThrow(() -> new OrderException(
                        "%s names no port: give one with --scale-port PORT".formatted(guided.scale)));
        try (BucketLineScale scale = new BucketLineScale(SerialPorts.open(port, settings.baud()), settings)) {
            return guide.carryOut(order, Optional.of(scale), person, watcher(), stop, papers.units);
        }
    }

    private List<Duty> duties() throws OrderException {
        try {
            return guided.duties.stream().map(Duty::ofPercent).toList();
        } catch (IllegalArgumentException e) {
            throw new OrderException("--duties: " + e.getMessage());
        }
    }

    private BucketWatcher watcher() {
        return new BucketWatcher() {
            @Override
            public void says(String words) {
                if (!papers.json) {
                    out.println(words);
                }
            }

            @Override
            public void live(double seconds, double pulses, double m3) {
                if (!papers.json && workshop.livePerson()) {
                    out.printf(
                            Locale.ROOT, "  %5.0f s %9.0f pulses %7.2f L by the meter\r", seconds, pulses, m3 * 1000);
                    out.flush();
                }
            }
        };
    }

    /** The process ends with this thread, so it waits until the run has ended safe and its runs are kept. */
    private static void stopAndWait(StopButton stop, BucketGuide guide, CountDownLatch done) {
        stop.press("the program was told to end");
        guide.stopNow();
        try {
            if (!done.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                Runtime.getRuntime().halt(ExitCode.STAND);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The process is ending already, by this very hook: there is nothing to forget.
            return;
        }
    }
}
