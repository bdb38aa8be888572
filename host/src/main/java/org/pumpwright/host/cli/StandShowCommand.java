package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Temperature;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandIdentity;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Sample;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows a stand and what it reads now; arms nothing. */
@Command(
        name = "show",
        description =
                "Shows a stand, its board, what its channels read now and by which calibrations. Arms and drives nothing.",
        mixinStandardHelpOptions = true)
final class StandShowCommand implements Callable<Integer> {
    private static final Duration WAIT = Duration.ofSeconds(1);

    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ReachOptions reach = new ReachOptions();

    @Option(names = "--units", paramLabel = "us|metric", description = "us if not given.", defaultValue = "US")
    private UnitSystem units = UnitSystem.US;

    StandShowCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        StandDescription description = workshop.shelf().stand(reach.stand);
        try (Stand stand = workshop.stands()
                .reach(description, reach.reach(), UnitKind.PUMP_12V)
                .stand()) {
            StandIdentity board = stand.open();
            PrintWriter out = spec.commandLine().getOut();
            out.println(description.title() + " (" + description.id() + ")");
            row(out, "board", board.boardKind() + ", firmware " + board.firmware() + ", id " + board.uniqueId());
            row(out, "last start", board.resetCause());
            row(out, "link time-out", board.linkTimeOutMillis() + " ms");
            row(out, "PWM of the pump", "%.0f Hz".formatted(board.pumpPwmHz()));
            row(out, "driver", description.driver());
            row(out, "nozzle", description.nozzle().id());
            row(out, "fluid", description.fluid());
            Sample now = firstSample(stand);
            row(out, "emergency stop", now.emergencyStopClosed() ? "closed (ready)" : "OPEN");
            row(out, "guard", now.guardClosed() ? "closed (ready)" : "OPEN");
            description
                    .channels()
                    .analogs()
                    .forEach(channel -> row(out, channel.role().words(), value(channel, now)));
            row(out, "meter pulses", Long.toString(now.meters().get(0).edges()));
            CalibrationTable.print(out, description.channels(), LocalDate.now(workshop.clock()));
            return ExitCode.PASS;
        }
    }

    private static Sample firstSample(Stand stand) throws StandException {
        while (true) {
            Optional<StandSignal> signal = stand.await(WAIT);
            if (signal.isPresent() && signal.get() instanceof Measured measured) {
                return measured.sample();
            }
        }
    }

    private String value(AnalogChannel channel, Sample now) {
        return channel.trouble(now).orElseGet(() -> value(channel, channel.read(now)));
    }

    private String value(AnalogChannel channel, double si) {
        return switch (channel.role()) {
            case VOLTS_AT_PINS -> String.format(Locale.ROOT, "%.2f V", si);
            case SUPPLY_AMPS -> String.format(Locale.ROOT, "%.2f A", si);
            case OUTLET_PRESSURE -> new Pressure(si).print(units);
            case WATER_TEMPERATURE -> new Temperature(si).print(units);
        };
    }

    private static void row(PrintWriter out, String name, String value) {
        out.printf("  %-18s %s%n", name, value);
    }
}
