package org.pumpwright.host.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.ClaimGate;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.grade.Decision;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Why a unit is tested, and whether it was before. */
final class JobOptions {
    private static final int LONGEST_CLAIM = 60;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--complaint",
            paramLabel = "CODE",
            description = {
                "What the customer says; picks the plan when --plan is not given: no-flow, low, surging, wont-start,",
                "quits-hot, leaks, blows-fuse, reads-wrong, reads-with-no-flow, intermittent."
            })
    private @Nullable String complaint;

    @Option(
            names = "--claim",
            paramLabel = "NUMBER",
            description = "Number of the claim or job that the unit is here for; stands on the papers.")
    private @Nullable String claim;

    @Option(
            names = "--new-job",
            description = "The unit is here anew, from repair for example: its earlier runs do not count.")
    private boolean newJob;

    @Option(
            names = "--decided-by",
            paramLabel = "NAME",
            description = "Who lets the unit be tested again after its two retests; needs --reason.")
    private @Nullable String decidedBy;

    @Option(
            names = "--bypass-decontamination",
            paramLabel = "NAME",
            description = "Who lets the unit of a claim be tested unrinsed; on record; needs --reason.")
    private @Nullable String bypass;

    @Option(
            names = "--reason",
            paramLabel = "TEXT",
            description = "Why; needs --decided-by or --bypass-decontamination.")
    private @Nullable String reason;

    /**
     * The job.
     *
     * @throws OrderException when there is no such complaint
     */
    Acceptance.Job job() throws OrderException {
        Optional<Complaint> said = complaint == null ? Optional.empty() : Optional.of(Complaint.ofWord(complaint));
        return new Acceptance.Job(said, newJob, decision(), claim());
    }

    private Optional<String> claim() throws OrderException {
        Optional<String> number = Optional.ofNullable(claim).map(String::strip);
        if (number.isPresent() && (number.get().isEmpty() || number.get().length() > LONGEST_CLAIM)) {
            throw new OrderException(
                    "--claim has %d characters, it must have 1 to %d. Give the number of the claim or job, or leave --claim away."
                            .formatted(number.get().length(), LONGEST_CLAIM));
        }
        return number;
    }

    /**
     * The plan that was asked for; else the one for the complaint, which is told; empty for the model's own.
     *
     * @param asked the plan that was asked for; null when none was
     * @param silent whether nothing is told
     */
    Optional<String> plan(UnitModel unit, Acceptance.Job job, @Nullable String asked, boolean silent) {
        if (asked != null || job.complaint().isEmpty()) {
            return Optional.ofNullable(asked);
        }
        Complaint said = job.complaint().get();
        Complaint.Proposal proposal = said.proposal(unit);
        if (!silent) {
            spec.commandLine()
                    .getOut()
                    .printf("Complaint '%s': plan %s, because %s.%n", said.word(), proposal.plan(), proposal.reason());
        }
        return Optional.of(proposal.plan());
    }

    /** Who lets the unit be tested though nobody has confirmed that it is clean; empty where nobody does. */
    Optional<ClaimGate.Waived> bypass() {
        if (bypass == null) {
            return Optional.empty();
        }
        if (reason == null || bypass.isBlank() || reason.isBlank()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--bypass-decontamination and --reason belong together: a named person answers for it, and says why");
        }
        return Optional.of(new ClaimGate.Waived(bypass, reason));
    }

    private Optional<Decision> decision() {
        if (decidedBy == null && (reason == null || bypass != null)) {
            return Optional.empty();
        }
        if (decidedBy == null || reason == null || decidedBy.isBlank() || reason.isBlank()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--decided-by and --reason belong together: a named person decides, and says why");
        }
        return Optional.of(new Decision(decidedBy, reason));
    }
}
