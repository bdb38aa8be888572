package org.pumpwright.host.cli.bucket;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.bucket.BucketCalibration;
import org.pumpwright.host.app.bucket.BucketGuide;
import org.pumpwright.host.app.bucket.LineScale;
import org.pumpwright.host.app.bucket.ScaleSettings;
import org.pumpwright.host.app.bucket.TestWatcher;
import org.pumpwright.host.cli.EndOfProcess;
import org.pumpwright.host.cli.TerminalOperator;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.serial.SerialPorts;

/** Has a bucket test guided on a stand while a person works at it, and can stop it with Ctrl-C. */
final class GuidedDesk {
    private final Workshop workshop;
    private final PrintWriter out;
    private final SheetOptions papers;
    private final GuidedOptions guided;
    private final BucketCalibration calibration;

    GuidedDesk(
            Workshop workshop,
            PrintWriter out,
            SheetOptions papers,
            GuidedOptions guided,
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
        EndOfProcess end = EndOfProcess.watch(workshop.stands(), stop, guide::stopNow);
        try {
            BucketGuide.Done test = guided(guide, stand, stop);
            if (!papers.json) {
                out.println();
                out.println("Runs           " + test.runs());
                out.println();
            }
            return BucketCommand.finish(
                    workshop, out, papers, test.sheet(), calibration, test.simulated(), Optional.of(stand(stand)));
        } finally {
            end.close();
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
        ScaleSettings settings = ScaleSettings.read(guided.scale);
        String port = Optional.ofNullable(guided.scalePort)
                .or(settings::port)
                .orElseThrow(() -> new OrderException(
                        "%s names no port: give one with --scale-port PORT".formatted(guided.scale)));
        try (LineScale scale = new LineScale(SerialPorts.open(port, settings.baud()), settings)) {
            return guide.carryOut(order, Optional.of(scale), person, watcher(), stop, papers.units);
        }
    }

    /** The stand's own name: it may have been given by the path of its file. */
    private String stand(String named) throws OrderException, DataFileException {
        return workshop.shelf().stand(named).id();
    }

    private List<Duty> duties() throws OrderException {
        try {
            return guided.duties.stream().map(Duty::ofPercent).toList();
        } catch (IllegalArgumentException e) {
            throw new OrderException("--duties: " + e.getMessage());
        }
    }

    private TestWatcher watcher() {
        return new TestWatcher() {
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
}
