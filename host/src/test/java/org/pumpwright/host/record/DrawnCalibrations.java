package org.pumpwright.host.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.pumpwright.host.calibration.Calibration;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.CodeRange;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.calibration.KPoint;
import org.pumpwright.host.calibration.MonitorAmps;
import org.pumpwright.host.calibration.MonitorVolts;
import org.pumpwright.host.calibration.Polynomial;
import org.pumpwright.host.calibration.Ratiometric;
import org.pumpwright.host.calibration.SteinhartHart;
import org.pumpwright.host.calibration.StraightLine;
import org.pumpwright.host.calibration.Thermistor;
import org.pumpwright.host.calibration.UncertaintyParts;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.trace.ChannelRole;

/** Calibrations of every kind, drawn at random. */
final class DrawnCalibrations {
    private static final LocalDate SOME_DAY = LocalDate.of(2026, 1, 31);

    private DrawnCalibrations() {}

    static Calibration calibration(Random random, ChannelRole role) {
        return switch (random.nextInt(5)) {
            case 0 -> new StraightLine(random.nextGaussian(), 1 + random.nextDouble(), parts(random), CodeRange.WHOLE);
            case 1 ->
                new StraightLine(
                        random.nextGaussian(), -1 - random.nextDouble(), parts(random), CodeRange.ofShares(0.01, 0.99));
            case 2 -> new Polynomial(polynomial(random), CodeRange.ofShares(0.1, 1), parts(random));
            case 3 -> ratiometric(random);
            default -> ownKind(random, role);
        };
    }

    private static List<Double> polynomial(Random random) {
        return List.of(random.nextGaussian(), 1 + random.nextDouble(), random.nextDouble());
    }

    private static Calibration ratiometric(Random random) {
        CodeRange sound = Ratiometric.halfWayToTheRails(0.1, 0.9);
        return new Ratiometric(0.1, 0.9, random.nextGaussian(), 10 + random.nextDouble(), parts(random), sound);
    }

    private static Calibration ownKind(Random random, ChannelRole role) {
        return switch (role) {
            case VOLTS_AT_PINS -> new MonitorVolts(parts(random));
            case SUPPLY_AMPS -> {
                OptionalDouble step = random.nextBoolean() ? OptionalDouble.of(0.001) : OptionalDouble.empty();
                yield new MonitorAmps(0.001 + random.nextDouble() / 1000, step, parts(random));
            }
            case OUTLET_PRESSURE -> ratiometric(random);
            case WATER_TEMPERATURE -> {
                SteinhartHart curve = new SteinhartHart(0.001129148, 0.000234125, 8.76741e-8);
                yield new Thermistor(curve, 10_000 + random.nextInt(100), 263.15, 343.15, parts(random));
            }
        };
    }

    private static UncertaintyParts parts(Random random) {
        return random.nextBoolean()
                ? UncertaintyParts.of(random.nextDouble(), random.nextDouble())
                : new UncertaintyParts(
                        random.nextDouble(), random.nextDouble(), random.nextDouble(), 1 + random.nextInt(256));
    }

    static KCurve kCurve(Random random) {
        if (random.nextBoolean()) {
            return KCurve.constant(new KFactor(1 + random.nextDouble() * 1e6));
        }
        List<KPoint> points = new ArrayList<>();
        for (int i = 1; i <= 4; i++) {
            points.add(new KPoint(new FlowRate(i * 1e-4), new KFactor(8e5 * (1 + 0.01 * random.nextGaussian()))));
        }
        return new KCurve(points);
    }

    static Certificate certificate(Random random, String number) {
        Optional<LocalDate> calibrated = Optional.of(SOME_DAY.plusDays(random.nextInt(400)));
        return switch (random.nextInt(3)) {
            case 0 -> Certificate.undated(number);
            case 1 -> new Certificate(number, calibrated, Optional.empty());
            default -> new Certificate(number, calibrated, calibrated.map(day -> day.plusDays(random.nextInt(400))));
        };
    }
}
