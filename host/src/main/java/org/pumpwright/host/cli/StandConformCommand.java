package org.pumpwright.host.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Version;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.stand.conform.Conformance;
import org.pumpwright.host.stand.conform.PersonProvoker;
import org.pumpwright.host.stand.conform.Provoker;
import org.pumpwright.host.stand.conform.ResultText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tries the stand's board against the wire protocol. */
@Command(
        name = "conform",
        description = {
            "Tries the stand's board against the wire protocol and says whether it conforms.",
            "Arms the stand again and again and drives drive 0 at up to 10 %% for moments."
        },
        mixinStandardHelpOptions = true)
final class StandConformCommand implements Callable<Integer> {
    private static final String CAUTION = """
            Caution: this closes the contactor many times and drives drive 0 at up to 10 %, each time for
            moments. Take the unit off the stand, or have water in it, nobody's hands near it, and the
            emergency stop within reach. The calibration kept on the board is written and put back; the run
            time limit stays 1 ms tighter until the board's next reset.""";

    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ReachOptions reach = new ReachOptions();

    @Option(names = "--yes", description = "Does not ask before it begins.")
    private boolean yes;

    @Option(
            names = "--with-person",
            description = "Asks you to press, open and close things; without it those checks are not possible.")
    private boolean withPerson;

    @Option(names = "--out", paramLabel = "FILE", description = "Writes the result to a new file.")
    @Nullable
    private Path file;

    StandConformCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        StandDescription description = workshop.shelf().stand(reach.stand);
        checkFileIsNew();
        if (description.connection() instanceof Connection.Serial && !confirmed(out)) {
            out.println("Nothing was done.");
            return ExitCode.USAGE;
        }
        ZonedDateTime date = ZonedDateTime.now(workshop.clock());
        Conformance.Finding finding = workshop.stands()
                .conformance(
                        description,
                        reach.reach(),
                        withPerson ? new PersonProvoker(out::println) : Provoker.NONE,
                        check -> out.println(ResultText.of(check)));
        out.printf("%n%s: board %s%n", finding.line(), finding.board());
        out.println(ResultText.verdict(finding));
        write(finding, date, out);
        return finding.conforms() ? ExitCode.PASS : ExitCode.FAIL;
    }

    private boolean confirmed(PrintWriter out) throws IOException {
        out.println(CAUTION);
        if (yes) {
            return true;
        }
        out.print("Begin? Type yes: ");
        out.flush();
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
        String answer = in.readLine();
        return answer != null && answer.strip().toLowerCase(Locale.ROOT).equals("yes");
    }

    private void checkFileIsNew() throws OrderException {
        Path target = file;
        if (target != null && Files.exists(target)) {
            throw alreadyThere(target);
        }
    }

    private void write(Conformance.Finding finding, ZonedDateTime date, PrintWriter out) throws OrderException {
        Optional<Path> target = Optional.ofNullable(file);
        if (target.isEmpty()) {
            return;
        }
        try {
            Files.write(
                    target.get(),
                    ResultText.sealed(finding, date, Version.text()),
                    StandardOpenOption.CREATE_NEW,
                    StandardOpenOption.WRITE);
            out.println("Result: " + target.get());
        } catch (FileAlreadyExistsException e) {
            throw alreadyThere(target.get());
        } catch (IOException e) {
            throw new OrderException("%s: the result can't be written (%s). Choose another folder with --out."
                    .formatted(target.get(), e.getMessage()));
        }
    }

    private static OrderException alreadyThere(Path target) {
        return new OrderException(
                "%s is already there; a result is never overwritten. Give another name with --out.".formatted(target));
    }
}
