package org.pumpwright.host.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.EditedFile;
import org.pumpwright.host.quantity.FlowRate;

class CurveFileTest {
    @TempDir
    private Path folder;

    @Test
    void aCurveIsReadInFull() throws Exception {
        HealthyCurve curve = CurveFile.read(small());
        assertThat(curve.label()).isEqualTo("small-curve v3");
        assertThat(curve.title()).isEqualTo("Small curve: for tests");
        assertThat(curve.simulated()).isTrue();
        assertThat(curve.conditions()).isEqualTo(new Conditions("demo-pump", "shop-7k8", 7812.5, "n-0.60", "water"));
        assertThat(curve.units()).isEqualTo(5);
        assertThat(curve.toleranceFactor()).isEqualTo(5.079);
        assertThat(curve.coverage()).isEqualTo("95 % of healthy units with 95 % confidence");
        assertThat(curve.freewheelVolts()).isEqualTo(0.5);
        assertThat(curve.author()).isEqualTo("Test Bench");
        assertThat(curve.made()).isEqualTo("2026-01-31");
        assertThat(curve.points()).extracting(CurvePoint::effectiveVolts).containsExactly(2.5, 6.0, 13.0);
        CurvePoint last = curve.points().get(2);
        assertThat(last.flowM3PerSecond())
                .isEqualTo(FlowRate.ofGallonsPerMinute(4.8).m3PerSecond());
        assertThat(last.flowSpread()).isCloseTo(0.016, within(1e-15));
        assertThat(last.motorAmps()).isEqualTo(12.4);
        assertThat(last.motorAmpsSpread()).isCloseTo(0.022, within(1e-15));
    }

    @Test
    void aCurveIsWrittenAsTextThatPeopleCanRead() throws Exception {
        HealthyCurve curve = CurveFile.read(small());
        Path written = folder.resolve("written.yaml");
        CurveFile.write(curve, written);
        assertThat(Files.readString(written)).isEqualTo("""
                # Healthy curve: mean and spread of known-good units over effective volts.
                # Written by a program; a new version is a new file with a higher version number.
                # The units behind it are simulated: all numbers are invented, for practice only.
                curve: "small-curve"
                version: 3
                title: "Small curve: for tests"
                origin: simulated
                conditions:
                  model: "demo-pump"
                  driver: "shop-7k8"
                  pwm_hz: 7812.5
                  nozzle: "n-0.60"
                  fluid: "water"
                units: 5
                tolerance_factor: 5.079
                coverage: "95 % of healthy units with 95 % confidence"
                freewheel_volts: 0.5
                author: "Test Bench"
                made: "2026-01-31"
                points:
                  - effective_volts: 2.5
                    flow_gpm: 1.25
                    flow_spread_percent: 2
                    motor_amps: 4.2
                    motor_amps_spread_percent: 3
                  - effective_volts: 6
                    flow_gpm: 2.75
                    flow_spread_percent: 1.8
                    motor_amps: 7.1
                    motor_amps_spread_percent: 2.5
                  - effective_volts: 13
                    flow_gpm: 4.8
                    flow_spread_percent: 1.6
                    motor_amps: 12.4
                    motor_amps_spread_percent: 2.2
                """);
        assertThat(CurveFile.read(written).withoutLines()).isEqualTo(curve.withoutLines());
    }

    @Test
    void aNewCurveReplacesTheOldFileAndLeavesNothingBesideIt() throws Exception {
        Path file = Files.writeString(folder.resolve("curve.yaml"), "an older file");
        HealthyCurve curve = CurveFile.read(small());
        CurveFile.write(curve, file);
        assertThat(CurveFile.read(file).withoutLines()).isEqualTo(curve.withoutLines());
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void aCurveThatCouldNotBeReadAgainIsNotWritten() throws Exception {
        HealthyCurve good = CurveFile.read(small());
        HealthyCurve badId = new HealthyCurve(
                "Small Curve",
                1,
                good.title(),
                good.conditions(),
                true,
                5,
                5.079,
                good.coverage(),
                0.5,
                good.points(),
                good.author(),
                good.made());
        Path file = folder.resolve("bad.yaml");
        assertThatThrownBy(() -> CurveFile.write(badId, file))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the curve cannot be written: " + file + ":4: curve is \"Small Curve\", allowed is"
                        + " 1 to 40 small letters, digits, points and dashes");
        assertThat(file).doesNotExist();
    }

    @Test
    void pointsThatDoNotAscendAreRefusedWithTheirLine() throws Exception {
        assertRefused(
                edited().with("effective_volts: 6", "effective_volts: 2.50"),
                ":24: points[1].effective_volts is 2.50, it must lie above the point before it, 2.5 (V)");
    }

    @Test
    void aCurveOfOnePointIsRefused() throws Exception {
        String text = Files.readString(small());
        String rest = text.substring(text.indexOf("  - effective_volts: 6"));
        assertRefused(edited().with(rest, ""), ":18: points is a list of 1, allowed is a list of 2 to 1000 (points)");
    }

    @Test
    void aDayThatIsInNoCalendarIsRefused() throws Exception {
        assertRefused(
                edited().with("2026-01-31", "2026-02-30"),
                ":17: made is \"2026-02-30\", which is no day of the calendar");
        assertRefused(
                edited().with("2026-01-31", "31/01/2026"),
                ":17: made is \"31/01/2026\", allowed is a day such as 2026-01-31");
    }

    @Test
    void aMissingValueIsToldWithTheLineOfItsPoint() throws Exception {
        assertRefused(
                edited().with("    flow_gpm: 2.75\n", ""),
                ":24: points[1].flow_gpm is missing, add it: allowed is 0 to 1000 (gal/min)");
    }

    private EditedFile edited() throws URISyntaxException {
        return new EditedFile(small(), folder);
    }

    private static Path small() throws URISyntaxException {
        return Path.of(CurveFileTest.class.getResource("small-curve.yaml").toURI());
    }

    private static void assertRefused(Path file, String problem) {
        assertThatThrownBy(() -> CurveFile.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessage(file + problem);
    }
}
