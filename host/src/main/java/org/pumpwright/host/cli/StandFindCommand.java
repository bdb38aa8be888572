package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.stand.StandIdentity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Asks every serial port who is there. */
@Command(
        name = "find",
        description = "Asks every serial port which board is there. Opening a port may reset its board.",
        mixinStandardHelpOptions = true)
final class StandFindCommand implements Callable<Integer> {
    private static final int STANDARD_BAUD = 250_000;

    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--also",
            paramLabel = "PORT",
            description = "A port that the system does not list, e.g. a pseudo-terminal.")
    private List<String> also = List.of();

    @Option(
            names = "--baud",
            paramLabel = "N",
            description = "Line speed; 250000 if not given.",
            defaultValue = "" + STANDARD_BAUD)
    private int baud = STANDARD_BAUD;

    StandFindCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        List<Stands.Found> found = workshop.stands().find(workshop.shelf().stand("serial"), baud, also);
        if (found.isEmpty()) {
            out.println(
                    "The system lists no serial port. Plug the board in; some cables only charge and carry no data.");
            return ExitCode.STAND;
        }
        found.forEach(each -> out.println(line(each)));
        return found.stream().anyMatch(each -> each.board().isPresent()) ? ExitCode.PASS : ExitCode.STAND;
    }

    private static String line(Stands.Found found) {
        return found.board()
                .map(board -> "%-16s board %s, firmware %s, id %s"
                        .formatted(found.port(), kind(board), board.firmware(), board.uniqueId()))
                .orElse(found.trouble());
    }

    private static String kind(StandIdentity board) {
        return board.boardKind();
    }
}
