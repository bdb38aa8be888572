package org.pumpwright.host.report.retest;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.SpreadParts;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.SampleRecords;

/** Invented runs before and after a repair. */
final class RetestSamples {
    private RetestSamples() {}

    static RunRecord before() {
        return SampleRecords.fail();
    }

    static RunRecord after() {
        return later(SampleRecords.pass(), "20260403-101500-22cc", "2026-04-03T10:15:00-05:00");
    }

    static RunRecord later(RunRecord run, String id, String startedAt) {
        return with(
                run, id, OffsetDateTime.parse(startedAt), run.subject(), run.stand(), run.conditions(), run.curve());
    }

    static RunRecord onAnotherStand(RunRecord run) {
        RunRecord.StandUsed was = run.stand();
        Conditions c = run.conditions();
        return with(
                run,
                run.id(),
                run.startedAt(),
                run.subject(),
                new RunRecord.StandUsed(
                        "bench-2", "Second stand", was.board(), was.boardUniqueId(), was.firmware(), was.bootId(), 0),
                new Conditions(c.model(), c.driver(), c.pwmHz(), "n-0.45", c.fluid()),
                run.curve());
    }

    static RunRecord onAnotherCurve(RunRecord run) {
        RunRecord.CurveUsed was = run.curve().orElseThrow();
        return with(
                run,
                run.id(),
                run.startedAt(),
                run.subject(),
                run.stand(),
                run.conditions(),
                Optional.of(new RunRecord.CurveUsed(
                        "demo-pump-n060 v3", was.units(), was.toleranceFactor(), was.coverage(), was.simulated())));
    }

    static RunRecord ofModel(RunRecord run, String model) {
        RunRecord.Subject was = run.subject();
        return with(
                run,
                run.id(),
                run.startedAt(),
                new RunRecord.Subject(model, was.modelTitle(), was.serial(), was.technician(), was.practice()),
                run.stand(),
                run.conditions(),
                run.curve());
    }

    /** A curve whose units differ from run to run by this share in flow and twice that in amps. */
    static HealthyCurve curve(double runSpread) {
        List<CurvePoint> points = new ArrayList<>();
        for (double volts = 2; volts <= 14; volts += 2) {
            points.add(new CurvePoint(
                    volts,
                    FlowRate.ofGallonsPerMinute(0.3 * volts).m3PerSecond(),
                    0.025,
                    0.8 * volts,
                    0.05,
                    Optional.of(new SpreadParts(0.02, runSpread, 0.005, 15, 3)),
                    Optional.of(new SpreadParts(0.04, 2 * runSpread, 0.01, 15, 3))));
        }
        return new HealthyCurve(
                "demo-pump-n060",
                2,
                "invented",
                SampleRecords.pass().conditions(),
                true,
                10,
                3.39,
                "95 % of healthy units, 95 % confidence",
                0.8,
                points,
                "test",
                "2026-01-01");
    }

    private static RunRecord with(
            RunRecord run,
            String id,
            OffsetDateTime at,
            RunRecord.Subject subject,
            RunRecord.StandUsed stand,
            Conditions conditions,
            Optional<RunRecord.CurveUsed> curve) {
        return new RunRecord(
                id,
                at,
                run.software(),
                subject,
                stand,
                conditions,
                run.plan(),
                curve,
                run.ending(),
                run.grade(),
                run.trace(),
                run.intake(),
                run.rules(),
                run.regradedFrom());
    }
}
