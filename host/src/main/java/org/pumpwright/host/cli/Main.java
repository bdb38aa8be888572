package org.pumpwright.host.cli;

import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.WireTiming;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The program's entry. The only place that ends the process. */
public final class Main {
    private Main() {}

    /** Runs the command line and exits with its code. */
    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        Workshop workshop = new Workshop(
                Path.of(System.getProperty("pumpwright.home", ".")),
                Path.of(System.getProperty("java.io.tmpdir"), "pumpwright-kept"),
                Clock.system(ZoneId.systemDefault()),
                new Stands(WireTiming.STANDARD, SerialPorts::open),
                new InputStreamReader(System.in, Charset.defaultCharset()),
                !Boolean.getBoolean("pumpwright.piped"),
                System.getenv());
        System.exit(run(workshop, out, err, arguments));
    }

    /** Runs the command line; the exit code is the answer. */
    static int run(Workshop workshop, PrintWriter out, PrintWriter err, String... arguments) {
        int code = PumpwrightCommand.tree(workshop)
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpAutoWidth(false)
                .setParameterExceptionHandler(Main::usage)
                .setExecutionExceptionHandler(Main::trouble)
                .execute(arguments);
        // The process ends right after this, and takes with it what is still in a buffer.
        out.flush();
        err.flush();
        return code;
    }

    private static int usage(ParameterException e, String[] arguments) {
        CommandLine command = e.getCommandLine();
        command.getErr().println("pumpwright: " + e.getMessage());
        command.getErr().println("Help: " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.USAGE;
    }

    private static int trouble(Exception e, CommandLine command, CommandLine.ParseResult parsed) {
        if (e instanceof OrderException || e instanceof DataFileException) {
            command.getErr().println("pumpwright: " + e.getMessage());
            return ExitCode.USAGE;
        }
        if (e instanceof StandException || e instanceof RunRecordException || e instanceof StoreException) {
            command.getErr().println("pumpwright: " + e.getMessage());
            return ExitCode.STAND;
        }
        command.getErr()
                .println(
                        "pumpwright: this is a fault of the program, not of the unit. Press the emergency stop before you"
                                + " touch the unit, and report what follows.");
        e.printStackTrace(command.getErr());
        return ExitCode.STAND;
    }
}
