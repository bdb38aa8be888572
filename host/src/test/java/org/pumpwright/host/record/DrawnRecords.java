package org.pumpwright.host.record;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.grade.BudgetTerm;
import org.pumpwright.host.grade.ComplaintAnswer;
import org.pumpwright.host.grade.Correction;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Guard;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.grade.Limits;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.record.RunRecord.StandUsed;
import org.pumpwright.host.record.RunRecord.Subject;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.rule.Source;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/** Draws records of any content, all of it from one seed. */
final class DrawnRecords {
    private static final String[] TEXTS = {
        "",
        " ",
        "no plate",
        "D-10442",
        "\"quoted\" \\ back",
        "line\nbreak\ttab",
        "Łódź ± 20 °C",
        "\uD83D\uDEB0 tap",
        "null",
        "\u0000\u001f",
        "  \"sha256_of_all_lines_above\": \"0\"\n}\n"
    };

    private final Random random;

    private DrawnRecords(long seed) {
        random = new Random(seed);
    }

    static RunRecord draw(long seed) {
        return new DrawnRecords(seed).run();
    }

    private RunRecord run() {
        return new RunRecord(
                text(),
                time(),
                text(),
                new Subject(text(), text(), text(), text(), random.nextBoolean()),
                new StandUsed(text(), text(), text(), text(), text(), integer(), integer()),
                new Conditions(text(), text(), number(), text(), text()),
                text(),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new CurveUsed(text(), random.nextInt(), number(), text(), random.nextBoolean())),
                new Ending(choice(Ending.Kind.values()), text()),
                grade(),
                trace(),
                intake(),
                optionalText(),
                optionalText());
    }

    private Grade grade() {
        return new Grade(
                choice(Verdict.values()),
                some(this::text),
                some(() -> new StandCheck(text(), random.nextBoolean(), text(), text())),
                some(this::feature),
                some(this::finding),
                some(() -> new Cause(text(), text(), text())),
                text(),
                text(),
                random.nextBoolean(),
                new ComplaintAnswer(choice(ComplaintAnswer.Answer.values()), text()),
                1 + random.nextInt(3));
    }

    private FeatureJudgement feature() {
        double dof = random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : 1 + random.nextDouble() * 100;
        return new FeatureJudgement(
                new Feature(text(), text(), choice(Feature.Kind.values()), choice(FindingUnit.values()), place()),
                optional(),
                number(),
                some(() -> new Correction(text(), number(), number(), random.nextBoolean(), text())),
                new Uncertain(number(), Math.abs(number()), dof),
                some(() -> new BudgetTerm(text(), number(), text())),
                limits(),
                new Guard(number(), number(), source()),
                choice(FeatureJudgement.Decision.values()),
                choice(Role.values()),
                text());
    }

    private Optional<Feature.Place> place() {
        return random.nextBoolean()
                ? Optional.empty()
                : Optional.of(new Feature.Place(
                        duty(), random.nextBoolean() ? Optional.empty() : Optional.of(choice(Leg.values()))));
    }

    private Limits limits() {
        double low = random.nextInt(3) == 0 ? Double.NEGATIVE_INFINITY : number();
        double high = random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : Math.max(low, 0) + random.nextDouble();
        return new Limits(text(), low, optional(), high, source(), text());
    }

    private Source source() {
        return new Source(text(), random.nextInt(1000), random.nextInt(1000));
    }

    private OptionalDouble optional() {
        return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(number());
    }

    private Intake intake() {
        return new Intake(
                        optionalText(),
                        some(this::text),
                        optionalText(),
                        1 + random.nextInt(5),
                        some(this::text),
                        random.nextBoolean() ? Optional.empty() : Optional.of(new Decision("n" + text(), "r" + text())))
                .handled(handling());
    }

    private Handling handling() {
        Optional<String> product = optionalText();
        return switch (random.nextInt(3)) {
            case 0 -> new Handling(product, Optional.empty(), Optional.empty());
            case 1 -> new Handling(product, Optional.of("n" + text()), Optional.empty());
            default -> new Handling(product, Optional.empty(), Optional.of(new Decision("n" + text(), "r" + text())));
        };
    }

    private Optional<String> optionalText() {
        return random.nextBoolean() ? Optional.empty() : Optional.of(text());
    }

    private Finding finding() {
        Finding.Outcome outcome = random.nextBoolean()
                ? new Finding.Word(text())
                : new Finding.Figure(
                        new Uncertain(number(), Math.abs(number()), 1 + random.nextDouble()),
                        choice(FindingUnit.values()));
        return new Finding(text(), text(), outcome, text());
    }

    private Trace trace() {
        int meters = random.nextInt(3);
        int analogs = random.nextInt(5);
        int drives = random.nextInt(3);
        return new Trace(channels(), some(() -> sample(meters, analogs, drives)), some(this::point));
    }

    private Channels channels() {
        MeterChannel meter = new MeterChannel(
                random.nextInt(2),
                DrawnCalibrations.kCurve(random),
                random.nextDouble(),
                new FlowRate(number()),
                DrawnCalibrations.certificate(random, text()));
        List<AnalogChannel> analogs = new ArrayList<>();
        for (ChannelRole role : ChannelRole.values()) {
            if (random.nextBoolean()) {
                analogs.add(new AnalogChannel(
                        role,
                        random.nextInt(4),
                        DrawnCalibrations.calibration(random, role),
                        DrawnCalibrations.certificate(random, text())));
            }
        }
        return new Channels(List.of(meter), analogs);
    }

    private Sample sample(int meters, int analogs, int drives) {
        return new Sample(
                integer(),
                times(meters, () -> new Sample.MeterCount(integer(), integer())),
                times(
                        analogs,
                        () -> new Sample.AnalogReading(random.nextInt(), random.nextInt(65536), random.nextInt(65536))),
                times(drives, this::duty),
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean());
    }

    private PointMark point() {
        long set = random.nextInt(1_000_000);
        return new PointMark(
                random.nextInt(20),
                choice(Leg.values()),
                duty(),
                set,
                set + random.nextInt(1000),
                set + 1000 + (random.nextLong() >>> 2),
                random.nextBoolean(),
                random.nextBoolean());
    }

    private OffsetDateTime time() {
        ZoneOffset offset = ZoneOffset.ofTotalSeconds(random.nextInt(2 * 18 * 60) * 60 - 18 * 3600);
        return Instant.ofEpochSecond(random.nextInt(), random.nextInt(1_000_000_000))
                .atOffset(offset);
    }

    /** Often near 2^53, where a JSON number stops being exact. */
    private long integer() {
        return switch (random.nextInt(5)) {
            case 0 -> (1L << 53) + random.nextInt(3) - 1;
            case 1 -> -(1L << 53) - random.nextInt(3) + 1;
            case 2 -> random.nextLong();
            default -> random.nextInt(1_000_000);
        };
    }

    private double number() {
        return switch (random.nextInt(6)) {
            case 0 -> 0;
            case 1 -> -0.0;
            case 2 -> random.nextInt(1000);
            case 3 -> random.nextDouble() * 1e-300;
            case 4 -> random.nextGaussian() * 1e15;
            default -> random.nextGaussian();
        };
    }

    private Duty duty() {
        return new Duty(random.nextInt(Duty.FULL_PARTS + 1));
    }

    private String text() {
        return choice(TEXTS);
    }

    private <T> T choice(T[] values) {
        return values[random.nextInt(values.length)];
    }

    private <T> List<T> some(Supplier<T> draw) {
        return times(random.nextInt(6), draw);
    }

    private static <T> List<T> times(int count, Supplier<T> draw) {
        List<T> values = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            values.add(draw.get());
        }
        return values;
    }
}
