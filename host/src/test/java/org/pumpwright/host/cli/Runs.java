package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.WireTiming;

/** Runs of simulated units whose records a test needs, each at its own time. */
final class Runs {
    private static final Duration APART = Duration.ofMinutes(10);

    private Runs() {}

    /** One run of the practice command; seed and time go by the number. */
    static void practice(Path records, int number, String serial, String fault, String severity) {
        StringWriter said = new StringWriter();
        PrintWriter print = new PrintWriter(said, true);
        Main.run(
                workshop(number),
                print,
                print,
                "practice",
                "--fault",
                fault,
                "--severity",
                severity,
                "--seed",
                Integer.toString(number),
                "--serial",
                serial,
                "--quiet",
                "--records",
                records.toString());
        if (!said.toString().contains("Record         ")) {
            throw new AssertionError("the run was not kept: " + said);
        }
    }

    /** What is said of one acceptance on the simulated stand, and its exit code; the time goes by the number. */
    static Said accept(Path records, int number, String serial, String... more) {
        StringWriter said = new StringWriter();
        PrintWriter print = new PrintWriter(said, true);
        List<String> words = new ArrayList<>(List.of(
                "accept",
                "--stand",
                "simulated",
                "--model",
                "demo-pump",
                "--serial",
                serial,
                "--records",
                records.toString()));
        words.addAll(List.of(more));
        int code = Main.run(workshop(number), print, print, words.toArray(String[]::new));
        return new Said(code, said.toString());
    }

    /**
     * What came of it.
     *
     * @param code exit code
     * @param text everything that was printed
     */
    record Said(int code, String text) {}

    private static Workshop workshop(int number) {
        Clock later = Clock.offset(CommandLineBench.CLOCK, APART.multipliedBy(number));
        return new Workshop(
                Firmware.root(),
                new CommandLineBench().spare,
                later,
                new Stands(WireTiming.STANDARD, SerialPorts::open),
                Reader.nullReader(),
                false,
                CommandLineBench.environment(Firmware.root()));
    }
}
