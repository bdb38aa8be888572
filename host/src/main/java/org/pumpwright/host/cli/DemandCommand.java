package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.DemandCheck;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.demand.Margin;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Temperature;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.record.RunRecordException;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the planter needs against what the unit gives. */
@Command(
        name = "demand",
        description = {
            "What a planter needs, a row and in all, and whether a unit gives it.",
            "",
            "Flow of a row in gal/min = gal/acre x mph x inches / 5940. Where nozzles",
            "meter, product asks for its flow times the root of its specific gravity of",
            "water; units are graded on water.",
            ""
        },
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Example: pumpwright demand --rows 16 --spacing 30 --rate 5 --speed 5.5",
            "                           --product uan-32 --available-gpm 3.5",
            "Exit codes: 0 enough, 1 too little, 2 wrong use, 4 tight or not certain."
        })
final class DemandCommand implements Callable<Integer> {
    private static final double PERCENT = 100;

    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DemandOptions planter = new DemandOptions();

    @Option(
            names = "--product",
            paramLabel = "NAME",
            description = "What is put out: a file in fixtures/fluids; water if not given.",
            defaultValue = "water")
    private String product = "";

    @Option(
            names = "--density-lb-gal",
            paramLabel = "X",
            description = "Density of your own product as you weighed it, lb per US gallon.")
    private @Nullable String density;

    @Option(
            names = "--temperature-f",
            paramLabel = "T",
            description = "Temperature of the product, Fahrenheit: picks the published density nearest to it.")
    private @Nullable Double fahrenheit;

    @Option(
            names = "--no-nozzles",
            description = "Nothing meters by pressure (a metering pump sets the flow): density does not count.")
    private boolean noNozzles;

    @ArgGroup
    private Source source = new Source();

    @Option(
            names = "--spare",
            paramLabel = "P",
            description = "Spare that is wanted, percent; 15 if not given (common practice).",
            defaultValue = "15")
    private double sparePercent;

    @Option(names = "--json", description = "Prints one JSON object in SI units, and nothing else.")
    private boolean json;

    /** What the unit gives: measured here, or told. */
    static final class Source {
        @Option(
                names = "--record",
                paramLabel = "FILE",
                description = "A stored run: its flow at the highest judged duty, with its uncertainty.")
        private @Nullable Path record;

        @Option(
                names = "--available-gpm",
                paramLabel = "X",
                description = "What the unit gives, water, gal/min; taken as exact.")
        private @Nullable String availableGpm;
    }

    DemandCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        DemandCheck.Product what = new DemandCheck(workshop.home().resolve("fixtures"))
                .product(
                        product,
                        Optional.ofNullable(density).map(text -> TypedNumber.of(spec, "--density-lb-gal", text)),
                        Optional.ofNullable(fahrenheit).map(f -> Temperature.ofCelsius((f - 32) / 1.8)));
        DemandCheck.Result result =
                DemandCheck.check(planter.planter(), what, !noNozzles, available(), sparePercent / PERCENT);
        PrintWriter out = spec.commandLine().getOut();
        DemandPage page = new DemandPage(result, planter.units, planter.pulsesPerUsGallon(), planter.meterRows());
        if (json) {
            out.println(page.json());
        } else {
            page.lines().forEach(out::println);
        }
        return result.margin().map(DemandCommand::exitCode).orElse(ExitCode.PASS);
    }

    private Optional<DemandCheck.Available> available() throws OrderException, RunRecordException {
        if (source.record != null) {
            return Optional.of(DemandCheck.ofRecord(source.record));
        }
        return Optional.ofNullable(source.availableGpm)
                .map(text -> TypedNumber.of(spec, "--available-gpm", text))
                .map(gpm -> new DemandCheck.Available(
                        Uncertain.of(FlowRate.ofGallonsPerMinute(gpm).m3PerSecond(), 0), "as typed, taken as exact"));
    }

    private static int exitCode(Margin margin) {
        return switch (margin.finding()) {
            case ENOUGH -> ExitCode.PASS;
            case TOO_LITTLE -> ExitCode.FAIL;
            case TIGHT, NOT_CERTAIN -> ExitCode.INCONCLUSIVE;
        };
    }
}
