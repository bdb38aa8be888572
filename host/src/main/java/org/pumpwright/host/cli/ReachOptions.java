package org.pumpwright.host.cli;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Stands;
import picocli.CommandLine.Option;

/** Which stand, and how it is reached: the same options on every command that uses one. */
final class ReachOptions {
    @Option(
            names = "--stand",
            required = true,
            paramLabel = "NAME",
            description = "The stand: 'simulated', 'serial', another file in fixtures/stands, or a path.")
    String stand = "";

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Serial port; without it the stand's own, or the only one.")
    @Nullable
    String port;

    /** A real stand, or a simulated one with a healthy unit. */
    Stands.Reach reach() {
        return new Stands.Reach(Optional.ofNullable(port), Optional.empty(), OptionalDouble.empty(), Map.of());
    }
}
