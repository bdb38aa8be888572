package org.pumpwright.host.record;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Trace;

/**
 * The record of one run. Thread-safe.
 *
 * @param id unlike that of any other record, and sorts by time
 * @param startedAt with the shop's UTC offset
 * @param software name and version of the program
 * @param subject what was tested, and by whom
 * @param stand what tested it
 * @param conditions what the run's curve must belong to
 * @param plan id and version
 * @param curve what it was graded against; empty where there was no curve
 * @param ending how the run ended
 * @param grade the judgement
 * @param trace everything that was measured
 * @param intake what was known of the unit when the run began: complaint, attempt, earlier runs
 * @param rules name and version of the rules it was graded by; empty where there were none
 * @param regradedFrom id of the record whose trace was graded again; empty for a run of its own
 */
public record RunRecord(
        String id,
        OffsetDateTime startedAt,
        String software,
        Subject subject,
        StandUsed stand,
        Conditions conditions,
        String plan,
        Optional<CurveUsed> curve,
        Ending ending,
        Grade grade,
        Trace trace,
        Intake intake,
        Optional<String> rules,
        Optional<String> regradedFrom) {
    /** A first run without a complaint, graded without rules of the shop. */
    public RunRecord(
            String id,
            OffsetDateTime startedAt,
            String software,
            Subject subject,
            StandUsed stand,
            Conditions conditions,
            String plan,
            Optional<CurveUsed> curve,
            Ending ending,
            Grade grade,
            Trace trace) {
        this(
                id,
                startedAt,
                software,
                subject,
                stand,
                conditions,
                plan,
                curve,
                ending,
                grade,
                trace,
                Intake.NONE,
                Optional.empty(),
                Optional.empty());
    }

    /** The same run with what was measured. */
    public RunRecord withTrace(Trace measured) {
        return new RunRecord(
                id,
                startedAt,
                software,
                subject,
                stand,
                conditions,
                plan,
                curve,
                ending,
                grade,
                measured,
                intake,
                rules,
                regradedFrom);
    }

    /** The same run with other words on what was tested and why it is here. */
    public RunRecord told(Subject tested, Intake given) {
        return new RunRecord(
                id,
                startedAt,
                software,
                tested,
                stand,
                conditions,
                plan,
                curve,
                ending,
                grade,
                trace,
                given,
                rules,
                regradedFrom);
    }

    /**
     * What was tested, and by whom.
     *
     * @param model id of the unit model
     * @param modelTitle for people
     * @param serial as read from the plate, or {@code no plate}
     * @param technician who tested
     * @param practice true for simulated or invented units: every paper then says so
     */
    public record Subject(String model, String modelTitle, String serial, String technician, boolean practice) {}

    /**
     * What tested it.
     *
     * @param id of the stand's description
     * @param title for people
     * @param board kind of board
     * @param boardUniqueId hexadecimal
     * @param firmware version
     * @param bootId the board's boot during the run
     * @param samplesLost samples that the board sent and the host never saw
     */
    public record StandUsed(
            String id,
            String title,
            String board,
            String boardUniqueId,
            String firmware,
            long bootId,
            long samplesLost) {}

    /**
     * The healthy curve it was graded against.
     *
     * @param label id and version
     * @param units number of known-good units behind it
     * @param toleranceFactor k
     * @param coverage in words
     * @param simulated whether those units were simulated
     */
    public record CurveUsed(String label, int units, double toleranceFactor, String coverage, boolean simulated) {}
}
