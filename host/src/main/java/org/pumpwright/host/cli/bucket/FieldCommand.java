package org.pumpwright.host.cli.bucket;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.pumpwright.host.calibrate.UnitMix;
import org.pumpwright.host.calibrate.field.NewK;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.TypedNumber;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.quantity.Volume;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A new K from an old one, at the planter. */
@Command(
        name = "field",
        description = {
            "A new K from the old one, at the planter.",
            "Catch a known volume while the monitor counts:",
            "new K = old K x indicated / caught",
            ""
        },
        mixinStandardHelpOptions = true,
        footer = {"", "Example: pumpwright bucket field --old-k 3000 --indicated 10.4 --caught 10"})
final class FieldCommand implements Callable<Integer> {
    private static final double PERCENT = 100;
    private static final double ROUGHLY = 0.015;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--old-k",
            required = true,
            paramLabel = "K",
            description = "K typed into the monitor, pulses per US gallon (per litre with --units metric).")
    private String oldK = "";

    @Option(
            names = "--indicated",
            required = true,
            paramLabel = "X",
            description = "What the monitor showed, US gallons (litres with --units metric).")
    private String indicated = "";

    @Option(names = "--caught", required = true, paramLabel = "X", description = "What was caught, in the same unit.")
    private String caught = "";

    @Option(
            names = "--caught-within",
            paramLabel = "P",
            description = "The caught volume is good to plus and minus this, percent; 1 if not given.",
            defaultValue = "1")
    private String within = "";

    @Option(names = "--units", paramLabel = "us|metric", description = "us if not given.", defaultValue = "US")
    private UnitSystem units = UnitSystem.US;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        KFactor old = k(number("--old-k", oldK));
        Volume shown = volume(number("--indicated", indicated));
        Volume real = volume(number("--caught", caught));
        double share = number("--caught-within", within) / PERCENT;
        Uncertain fresh = NewK.withUncertainty(old, shown, new Volume(0), real, new Volume(real.m3() * share));
        KFactor k = new KFactor(fresh.value());
        out.printf(
                Locale.ROOT,
                "The monitor showed %+.2f %% against what was caught.%n",
                PERCENT * NewK.errorShare(shown, real));
        out.printf(
                Locale.ROOT,
                "New K          %.1f pulses per US gallon = %.2f pulses per litre%n",
                k.pulsesPerUsGallon(),
                k.pulsesPerLitre());
        out.printf(
                Locale.ROOT,
                "U              %.1f %% (k = 2), from the caught volume alone%n",
                PERCENT * 2 * fresh.relative());
        UnitMix.between(shown.m3(), real.m3())
                .filter(mix -> Math.abs(NewK.errorShare(shown, real)) > ROUGHLY)
                .ifPresent(mix -> out.printf(
                        Locale.ROOT,
                        "CAUTION: what was shown is %.3f times what was caught, the ratio of %s. Look at the monitor's"
                                + " units before you type a new K.%n",
                        shown.m3() / real.m3(),
                        mix.words()));
        return ExitCode.PASS;
    }

    private KFactor k(double value) {
        return units == UnitSystem.US ? KFactor.ofPulsesPerUsGallon(value) : new KFactor(value * 1000);
    }

    private Volume volume(double value) {
        return units == UnitSystem.US ? Volume.ofUsGallons(value) : new Volume(value / 1000);
    }

    private double number(String option, String text) {
        return TypedNumber.of(spec, option, text);
    }
}
