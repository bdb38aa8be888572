package org.pumpwright.host.report.bucket;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Volume;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecord.BudgetLine;
import org.pumpwright.host.record.BucketRecord.Check;
import org.pumpwright.host.record.BucketRecord.Flow;
import org.pumpwright.host.record.BucketRecord.KValue;

/** A bucket test of an invented meter. */
public final class BucketSamples {
    private BucketSamples() {}

    /** With a name that tries to be markup, an accented letter and a control sign. */
    public static BucketRecord hostile() {
        return record("M<b>1</b> é\u0007", "Example & Söhne", Optional.of("the hose slipped off"));
    }

    public static BucketRecord plain() {
        return record("M-0001", "Example farm (invented)", Optional.empty());
    }

    private static BucketRecord record(String serial, String customer, Optional<String> leftOut) {
        List<Flow> flows = new ArrayList<>();
        for (double gpm : new double[] {0.25, 1, 2, 4}) {
            flows.add(flow(gpm, leftOut));
        }
        return new BucketRecord(
                "K20260302T151500.000Z",
                OffsetDateTime.parse("2026-03-02T09:15:00-06:00"),
                "Pumpwright 0.1.0",
                new BucketRecord.Shop(
                        "Calibration report",
                        "Practice Shop (invented)",
                        List.of("1 Example Road", "Exampleville"),
                        "US",
                        ""),
                new BucketRecord.Job(
                        customer,
                        "laboratory",
                        Optional.of(LocalDate.of(2026, 2, 27)),
                        LocalDate.of(2026, 3, 2),
                        "A. Example",
                        ""),
                new BucketRecord.Meter(
                        serial,
                        "invented meter",
                        "clean",
                        "as found",
                        OptionalDouble.of(2992 / Volume.M3_PER_US_GALLON),
                        OptionalDouble.empty()),
                new BucketRecord.Method(
                        "weighed-flying v1",
                        "weighed bucket, flying start and finish",
                        "water, 998.72 kg/m3 at 18.4 °C"),
                List.of(new BucketRecord.Equipment(
                        "scale",
                        "bench scale",
                        new Certificate(
                                "S-2026-11",
                                Optional.of(LocalDate.of(2026, 1, 20)),
                                Optional.of(LocalDate.of(2027, 1, 20))))),
                List.of(new BucketRecord.Condition("Air temperature", 20, "°C")),
                flows,
                new BucketRecord.Result(
                        new KValue(3010.5 / Volume.M3_PER_US_GALLON, 0.0005, 40, 2.06),
                        "for work at 1.00 gal/min, 2.00 gal/min",
                        FlowRate.ofGallonsPerMinute(1).m3PerSecond(),
                        FlowRate.ofGallonsPerMinute(4).m3PerSecond(),
                        0.0024,
                        0.0083,
                        Optional.of(new BucketRecord.Fit(
                                3017.4 / Volume.M3_PER_US_GALLON,
                                1.5 / Volume.M3_PER_US_GALLON,
                                FlowRate.ofGallonsPerMinute(0.0039).m3PerSecond(),
                                FlowRate.ofGallonsPerMinute(0.0006).m3PerSecond(),
                                List.of(0.0001, -0.0002, 0.0, 0.0001))),
                        List.of(
                                new Check("runs agree (repeatability gate)", true, "range at most 0.38 % of K"),
                                new Check("change since the previous K", false, "+0.62 %")),
                        false),
                new BucketRecord.Wording(
                        leftOut.map(why -> "Run 5 was left out: " + why + ".").stream()
                                .toList(),
                        List.of("K falls off at low flow."),
                        "simple acceptance",
                        Optional.empty(),
                        Optional.of(new BucketRecord.Amendment("K20260301T151500.000Z", 1, "name corrected")),
                        ""),
                new BucketRecord.Source("sheet.yaml", "ab".repeat(32), "sheet: x\n"),
                true);
    }

    private static Flow flow(double gpm, Optional<String> leftOut) {
        double k = 3017.4 * (1 - 0.0039 / gpm) / Volume.M3_PER_US_GALLON;
        List<BucketRecord.Run> runs = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            runs.add(new BucketRecord.Run(
                    6000 + i,
                    (6000 + i) / k,
                    120,
                    "7581.0 g net",
                    k * (1 + 0.0004 * (i - 2)),
                    i == 4 ? leftOut : Optional.empty()));
        }
        return new Flow(
                FlowRate.ofGallonsPerMinute(gpm).m3PerSecond(),
                "up",
                runs,
                new KValue(k, 0.0006, 21, 2.13),
                0.0006,
                0.0016,
                List.of(
                        new BudgetLine("scale certificate", "B", 0.00013, Double.POSITIVE_INFINITY),
                        new BudgetLine("repeatability of the mean", "A", 0.0004, 4)));
    }
}
