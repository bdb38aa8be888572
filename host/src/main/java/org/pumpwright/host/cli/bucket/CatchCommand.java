package org.pumpwright.host.cli.bucket;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.calibrate.field.NozzleCatch;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.TypedNumber;
import org.pumpwright.host.quantity.Volume;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What was caught at each row over the same time. */
@Command(
        name = "catch",
        description = {
            "Catch test over the rows: mean, scatter, and the rows that are off.",
            "Catch at every row for the same time; any unit, the same for all.",
            ""
        },
        mixinStandardHelpOptions = true,
        footer = {"", "Example: pumpwright bucket catch 44 43.5 45 39 44.5", "Exit codes: 0 all within, 1 some are off."
        })
final class CatchCommand implements Callable<Integer> {
    private static final double PERCENT = 100;
    /** Only ratios are printed, so that any unit will do. */
    private static final double ANY_UNIT_M3 = 1e-6;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "2..*", paramLabel = "VOLUME", description = "What was caught at row 1, 2, ...")
    private List<String> volumes = List.of();

    @Option(
            names = "--limit",
            paramLabel = "P",
            description = "A row is off by more than this from the mean, percent; 5 if not given.",
            defaultValue = "5")
    private String limit = "";

    @Override
    public Integer call() throws OrderException {
        double share = TypedNumber.of(spec, "--limit", limit) / PERCENT;
        List<Volume> rows = new ArrayList<>();
        for (String text : volumes) {
            rows.add(new Volume(
                    text.equals("0") ? 0 : TypedNumber.of(spec, "row " + (rows.size() + 1), text) * ANY_UNIT_M3));
        }
        NozzleCatch caught = caught(rows);
        PrintWriter out = spec.commandLine().getOut();
        out.printf(
                Locale.ROOT,
                "Mean %.2f over %d rows, coefficient of variation %.2f %%%n",
                caught.mean().m3() / ANY_UNIT_M3,
                rows.size(),
                PERCENT * caught.coefficientOfVariation());
        List<NozzleCatch.Row> off = caught.off(share);
        for (NozzleCatch.Row row : caught.all()) {
            out.printf(
                    Locale.ROOT,
                    "  row %3d %10.2f  %+6.1f %%%s%n",
                    row.number(),
                    row.caught().m3() / ANY_UNIT_M3,
                    PERCENT * row.offShare(),
                    off.contains(row) ? "  OFF: clean or replace, then catch again" : "");
        }
        out.printf(
                Locale.ROOT,
                "%s%n",
                off.isEmpty()
                        ? "Every row is within the limit."
                        : off.size() + " of " + rows.size() + " rows are off.");
        return off.isEmpty() ? ExitCode.PASS : ExitCode.FAIL;
    }

    private static NozzleCatch caught(List<Volume> rows) throws OrderException {
        try {
            return new NozzleCatch(rows);
        } catch (IllegalArgumentException e) {
            throw new OrderException(e.getMessage() + ".");
        }
    }
}
