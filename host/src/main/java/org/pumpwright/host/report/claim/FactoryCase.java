package org.pumpwright.host.report.claim;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.Reproduced;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.record.RunRecord.StandUsed;
import org.pumpwright.host.record.ledger.Digest;

/**
 * What goes to the factory about one unit and one run. It has no place for who the customer is, for anybody's name or for anybody's
 * own words, so none of these can get onto the paper. Thread-safe.
 *
 * @param unit what was tested
 * @param claim what the desk found; empty for a run without a claim
 * @param run how it was tested and what was measured
 * @param sha256 digest of the record that this is taken from
 */
public record FactoryCase(Unit unit, Optional<Claimed> claim, Run run, Digest sha256) {
    /**
     * What was tested.
     *
     * @param model id of the model
     * @param modelTitle for people
     * @param serial as read from the plate
     * @param dateCode the maker's, as it stands on the plate
     * @param hours in use, with its source
     * @param acres in use, with their source
     * @param practice whether it is simulated or invented
     */
    public record Unit(
            String model,
            String modelTitle,
            String serial,
            Optional<String> dateCode,
            Optional<Sourced<Double>> hours,
            Optional<Sourced<Double>> acres,
            boolean practice) {}

    /**
     * What the desk found.
     *
     * @param complaint the complaint as a code word; blank when nobody gave one
     * @param category neutral category; empty while nobody has signed one
     * @param reproduced whether the complaint showed; empty while nobody has signed
     * @param parts the parts concerned
     */
    public record Claimed(
            String complaint, Optional<Category> category, Optional<Reproduced> reproduced, List<String> parts) {
        public Claimed {
            parts = List.copyOf(parts);
        }
    }

    /**
     * How it was tested and what was measured.
     *
     * @param id of the record
     * @param startedAt when
     * @param software name and version of the program
     * @param plan id and version
     * @param curve what it was held against
     * @param rules name and version of the rules
     * @param rule the decision rule in words
     * @param conditions driver, nozzle and fluid
     * @param stand what tested it
     * @param attempt which run for this matter
     * @param verdict on the unit
     * @param advisory whether the verdict only advises, because too few units stand behind the curve
     * @param features what was held against limits
     * @param figures what the steps have read
     * @param causes the likeliest first
     */
    public record Run(
            String id,
            OffsetDateTime startedAt,
            String software,
            String plan,
            Optional<CurveUsed> curve,
            Optional<String> rules,
            String rule,
            Conditions conditions,
            StandUsed stand,
            int attempt,
            Verdict verdict,
            boolean advisory,
            List<FeatureJudgement> features,
            List<org.pumpwright.host.grade.finding.Finding> figures,
            List<Cause> causes) {
        public Run {
            features = List.copyOf(features);
            figures = List.copyOf(figures);
            causes = List.copyOf(causes);
        }
    }

    /**
     * Takes from a run, and from its claim where there is one, what may leave the shop.
     *
     * @param sha256 digest of the record of the run
     */
    public static FactoryCase of(RunRecord run, Optional<ClaimFile> claim, Digest sha256) {
        Unit unit = new Unit(
                run.subject().model(),
                run.subject().modelTitle(),
                run.subject().serial(),
                claim.flatMap(file -> file.intake().unit().dateCode()),
                claim.flatMap(file -> file.intake().use().hours()),
                claim.flatMap(file -> file.intake().use().acres()),
                run.subject().practice());
        return new FactoryCase(unit, claim.map(FactoryCase::claimed), run(run), sha256);
    }

    private static Claimed claimed(ClaimFile file) {
        Optional<Finding> finding = file.finding();
        return new Claimed(
                file.intake().complaint().code(),
                finding.map(Finding::category),
                finding.map(Finding::reproduced),
                finding.map(Finding::parts).orElse(List.of()));
    }

    private static Run run(RunRecord run) {
        return new Run(
                run.id(),
                run.startedAt(),
                run.software(),
                run.plan(),
                run.curve(),
                run.rules(),
                run.grade().rule(),
                run.conditions(),
                run.stand(),
                run.intake().attempt(),
                run.grade().verdict(),
                run.grade().advisory(),
                run.grade().features(),
                run.grade().findings(),
                run.grade().causes());
    }
}
