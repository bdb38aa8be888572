package org.pumpwright.host.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plant.Severity;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The unit on a simulated stand, and how fast its time passes. */
final class SimulatedUnitOptions {
    private static final long FIRST_UNIT = 1;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--fault",
            paramLabel = "WORD",
            description = "Fault of a simulated unit; 'pumpwright practice --list' names them.",
            completionCandidates = FaultNames.class)
    @Nullable
    String fault;

    @Option(
            names = "--severity",
            paramLabel = "WORD",
            description = "Severity of that fault: mild, moderate or severe.",
            converter = FaultNames.Severities.class)
    @Nullable
    Severity severity;

    @Option(names = "--seed", paramLabel = "N", description = "Which simulated unit; the same number is the same unit.")
    @Nullable
    Long seed;

    @Option(
            names = "--pace",
            paramLabel = "X",
            description = "Simulated seconds in a second; 1 is real time. As fast as it goes if not given.")
    @Nullable
    Double pace;

    /**
     * The unit of this kind as it was asked for; empty when nothing was asked.
     *
     * @throws OrderException when the kind has no such fault
     */
    Optional<PracticeUnit> unit(UnitKind kind) throws OrderException {
        if (fault == null && severity == null && seed == null) {
            return Optional.empty();
        }
        return Optional.of(new PracticeUnit(
                kind,
                fault == null ? PracticeUnit.faults(kind).get(0) : PracticeUnit.fault(kind, fault),
                severity == null ? Severity.MODERATE : severity,
                seed == null ? FIRST_UNIT : seed));
    }

    OptionalDouble pace() {
        if (pace != null && !(pace > 0)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--pace is %s, it must be above 0; leave it away for as fast as it goes".formatted(pace));
        }
        return pace == null ? OptionalDouble.empty() : OptionalDouble.of(pace);
    }
}
