package org.pumpwright.host.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.StringLength;

class CurveFileRoundTripTest {
    /** Half a step of the last of six printed digits, as a share of the value. */
    private static final double PRINTED = 0.6e-5;

    @Property(tries = 200, seed = "42")
    void aWrittenCurveReadsBackEqualWithinThePrintedDigits(
            @ForAll("points") List<CurvePoint> points, @ForAll @StringLength(min = 1, max = 40) String author)
            throws Exception {
        HealthyCurve curve = curve(ascending(points), author);
        HealthyCurve read = throughFile(curve);
        assertThat(read.author()).isEqualTo(author);
        assertThat(read.points()).hasSameSizeAs(curve.points());
        for (int i = 0; i < points.size(); i++) {
            assertClose(read.points().get(i), curve.points().get(i));
        }
        assertThat(CurveText.of(read)).isEqualTo(CurveText.of(curve));
    }

    @Provide
    Arbitrary<List<CurvePoint>> points() {
        Arbitrary<Double> spread = Arbitraries.doubles().between(0, 0.5);
        return Combinators.combine(
                        Arbitraries.doubles().between(0, 0.01),
                        spread,
                        Arbitraries.doubles().between(0, 60),
                        spread)
                .as((flow, flowSpread, amps, ampsSpread) -> new CurvePoint(0, flow, flowSpread, amps, ampsSpread))
                .list()
                .ofMinSize(2)
                .ofMaxSize(12);
    }

    private static HealthyCurve curve(List<CurvePoint> points, String author) {
        Conditions conditions = new Conditions("demo-pump", "shop-7k8", 7812.5, "n-0.60", "water");
        return new HealthyCurve("c", 1, "Curve", conditions, true, 9, 3.53, "95/95", 0.5, points, author, "2026-01-31");
    }

    private static List<CurvePoint> ascending(List<CurvePoint> points) {
        List<CurvePoint> ascending = new ArrayList<>();
        for (CurvePoint p : points) {
            double volts = 1.1 + ascending.size() * Math.PI / 3;
            ascending.add(
                    new CurvePoint(volts, p.flowM3PerSecond(), p.flowSpread(), p.motorAmps(), p.motorAmpsSpread()));
        }
        return ascending;
    }

    private static HealthyCurve throughFile(HealthyCurve curve) throws Exception {
        Path folder = Files.createTempDirectory("curve");
        Path file = folder.resolve("curve.yaml");
        try {
            CurveFile.write(curve, file);
            return CurveFile.read(file);
        } finally {
            Files.deleteIfExists(file);
            Files.delete(folder);
        }
    }

    private static void assertClose(CurvePoint read, CurvePoint written) {
        assertClose(read.effectiveVolts(), written.effectiveVolts());
        assertClose(read.flowM3PerSecond(), written.flowM3PerSecond());
        assertClose(read.flowSpread(), written.flowSpread());
        assertClose(read.motorAmps(), written.motorAmps());
        assertClose(read.motorAmpsSpread(), written.motorAmpsSpread());
    }

    private static void assertClose(double read, double written) {
        assertThat(read).isCloseTo(written, within(PRINTED * Math.abs(written)));
    }
}
