package org.pumpwright.host.cli.bucket;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How a guided bucket test is to go. */
final class GuidedOptions {
    @Option(names = "--port", paramLabel = "PORT", description = "With --stand: its serial port.")
    @Nullable
    String port;

    @Option(
            names = "--duties",
            split = ",",
            paramLabel = "P",
            description = "With --stand: duties in percent, one flow each, commas between; 40,60,80,100 if not given.")
    List<Double> duties = List.of(40.0, 60.0, 80.0, 100.0);

    @Option(
            names = "--runs",
            paramLabel = "N",
            description = "With --stand: runs at each flow; 5 if not given.",
            defaultValue = "5")
    int runs;

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "With --stand: least length of a run; 60 if not given.",
            defaultValue = "60")
    double seconds;

    @Option(
            names = "--drive",
            paramLabel = "0|1",
            description = "With --stand: drive that feeds the meter; 0 if not given.")
    int drive;

    @Option(names = "--meter", paramLabel = "0|1", description = "With --stand: the meter under test; 0 if not given.")
    int meter;

    @Option(
            names = "--water-celsius",
            paramLabel = "T",
            description = "With --stand: water temperature, where the stand has no thermometer; 20 if not given.",
            defaultValue = "20")
    double celsius;

    @Option(
            names = "--scale",
            paramLabel = "FILE",
            description =
                    "With --stand: settings of a scale that sends its reading as text; without it weights are typed.")
    @Nullable
    Path scale;

    @Option(names = "--scale-port", paramLabel = "PORT", description = "With --scale: its serial port.")
    @Nullable
    String scalePort;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "With a simulated stand: which unit; 1 if not given.",
            defaultValue = "1")
    long seed;
}
