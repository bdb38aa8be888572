package org.pumpwright.host.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.EditedFile;
import org.pumpwright.host.quantity.FlowRate;

/** What a curve's file may leave out: how it was built, who approved it, limits of function. */
class CurveExtrasTest {
    @TempDir
    private Path folder;

    @Test
    void aBuiltCurveIsWrittenAndReadBackEqual() throws Exception {
        HealthyCurve built = built().approved(new Approval("B. Second", LocalDate.of(2026, 3, 4)));
        Path file = folder.resolve("built.yaml");
        CurveFile.write(built, file);
        assertThat(CurveFile.read(file).withoutLines()).isEqualTo(built.withoutLines());
        assertThat(Files.readString(file))
                .contains("interpolation: monotone\nbasis:\n  plan: \"quick v3\"\n  runs: 8\n")
                .contains("approval:\n  by: \"B. Second\"\n  on: \"2026-03-04\"\n")
                .contains("      - quantity: flow\n        effective_volts: 12.5\n        low_gpm: 4\n");
    }

    @Test
    void aCurveThatNobodyApprovedOnlyAdvises() throws Exception {
        assertThat(built().awaitsApproval()).isTrue();
        assertThat(built().provisional()).isTrue();
        HealthyCurve approved = built().approved(new Approval("B. Second", LocalDate.of(2026, 3, 4)));
        assertThat(approved.provisional()).isFalse();
        assertThat(CurveFile.read(small()).provisional()).isFalse();
    }

    @Test
    void fewUnitsAdviseEvenWhenApproved() throws Exception {
        Path file = edited("units: 5", "units: 4");
        assertThat(CurveFile.read(file).provisional()).isTrue();
    }

    @Test
    void theAuthorIsRefusedAsApprover() throws Exception {
        Path file = edited("points:\n", "approval:\n  by: \" test  BENCH\"\n  on: \"2026-02-01\"\npoints:\n");
        assertThatThrownBy(() -> CurveFile.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessage(file + ":19: approval.by is \"test  BENCH\", who is the author: another person approves");
    }

    @Test
    void aLimitInTheWrongUnitIsRefused() throws Exception {
        Path file = edited("points:\n", """
                limit_sets:
                  - name: "Planter"
                    source: "rate chart"
                    set_by: "B. Second"
                    guard_factor: 1.645
                    limits:
                      - quantity: flow
                        effective_volts: 12
                        low_amps: 4
                points:
                """);
        assertThatThrownBy(() -> CurveFile.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessageContaining("low_amps does not belong to the quantity \"flow\"");
    }

    @Test
    void betweenItsPointsABuiltCurveBends() throws Exception {
        HealthyCurve straight = CurveFile.read(small());
        HealthyCurve bent = CurveFile.read(edited("points:\n", "interpolation: monotone\npoints:\n"));
        double chord = straight.at(9.5).flowM3PerSecond();
        assertThat(bent.at(9.5).flowM3PerSecond()).isGreaterThan(chord).isCloseTo(chord, within(0.05 * chord));
        assertThat(bent.at(6).flowM3PerSecond()).isCloseTo(straight.at(6).flowM3PerSecond(), within(1e-12));
        assertThat(bent.at(20).motorAmps()).isCloseTo(straight.at(20).motorAmps(), within(1e-12));
        assertThat(bent.flow(9.5).low()).isLessThan(bent.flow(9.5).centre());
    }

    @Test
    void aListOfKnownGoodUnitsIsRead() throws Exception {
        Path file = Files.writeString(folder.resolve("good.yaml"), """
                declared_by: "A. First"
                declared_on: 2026-01-05
                model: demo-pump
                units:
                  - { serial: " A1 ", because: "new, batch 3" }
                  - { serial: "A2", because: "two seasons without complaint" }
                """);
        KnownGoodList list = KnownGoodFile.read(file);
        assertThat(list.declaredBy()).isEqualTo("A. First");
        assertThat(list.holds("A1 ")).isTrue();
        assertThat(list.holds("A3")).isFalse();
        assertThat(list.reasons()).containsEntry("A2", "two seasons without complaint");
    }

    @Test
    void aUnitListedTwiceIsRefused() throws Exception {
        Path file = Files.writeString(folder.resolve("good.yaml"), """
                declared_by: "A. First"
                declared_on: "2026-01-05"
                model: demo-pump
                units:
                  - { serial: "A1", because: "new" }
                  - { serial: "A1", because: "new" }
                """);
        assertThatThrownBy(() -> KnownGoodFile.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessage(file + ":6: units[1].serial is \"A1\", which is listed a second time");
    }

    private HealthyCurve built() throws Exception {
        HealthyCurve small = CurveFile.read(small());
        SpreadParts parts = new SpreadParts(0.02, 0.005, 0.01, 4.25, 5.5);
        List<CurvePoint> points = List.of(
                new CurvePoint(2, 1.25e-4, 0.03, 4, 0.05, Optional.of(parts), Optional.of(parts)),
                new CurvePoint(12.5, 2.5e-4, 0.02, 12, 0.04, Optional.of(parts), Optional.empty()));
        HealthyCurve built = new HealthyCurve(
                small.id(),
                small.version(),
                small.title(),
                small.conditions(),
                true,
                5,
                4.5,
                small.coverage(),
                0.5,
                points,
                "A. First",
                small.made(),
                Interpolation.MONOTONE,
                Optional.of(new Basis(
                        "quick v3",
                        8,
                        LocalDate.of(2026, 1, 5),
                        LocalDate.of(2026, 1, 9),
                        "A. First",
                        4,
                        List.of("20260105T151500.000Z", "20260105T161500.000Z"))),
                Optional.empty(),
                List.of(new LimitSet("Planter at 5 mph", "rate chart with 15 % margin", "B. Second", 1.645, limits())));
        return printed(built);
    }

    /** The curve with the digits that a file holds. */
    private HealthyCurve printed(HealthyCurve curve) throws Exception {
        Path file = folder.resolve("printed.yaml");
        CurveFile.write(curve, file);
        return CurveFile.read(file);
    }

    private static List<LimitSet.Limit> limits() {
        return List.of(
                new LimitSet.Limit(
                        LimitSet.Quantity.FLOW,
                        12.5,
                        OptionalDouble.of(FlowRate.ofGallonsPerMinute(4).m3PerSecond()),
                        OptionalDouble.empty()),
                new LimitSet.Limit(LimitSet.Quantity.MOTOR_AMPS, 12.5, OptionalDouble.empty(), OptionalDouble.of(20)));
    }

    private Path edited(String part, String changed) throws Exception {
        return new EditedFile(small(), folder).with(part, changed);
    }

    private static Path small() throws URISyntaxException {
        return Path.of(CurveExtrasTest.class.getResource("small-curve.yaml").toURI());
    }
}
