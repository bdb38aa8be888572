package org.pumpwright.host.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.curve.KnownGoodUnit.Point;

class CurveBuilderTest {

    /** A unit whose flow and current are parabolas of the volts, scaled. */
    private static KnownGoodUnit unit(double scale, double... volts) {
        return new KnownGoodUnit(DoubleStream.of(volts)
                .mapToObj(v -> new Point(v, scale * flow(v), scale * scale * amps(v)))
                .toList());
    }

    private static double flow(double volts) {
        return 1e-5 * (3 * volts - 0.05 * volts * volts);
    }

    private static double amps(double volts) {
        return 1 + 0.5 * volts + 0.04 * volts * volts;
    }

    @Test
    void meanAndSpreadAreThoseBetweenTheUnits() {
        List<KnownGoodUnit> units = List.of(
                unit(0.98, 2, 4, 7, 10, 13), unit(1.00, 2.1, 4.1, 7.1, 10.1, 13.1), unit(1.02, 2, 4, 7, 10, 13));
        List<CurvePoint> points = CurveBuilder.points(units, new double[] {3, 8.5, 13.5});
        for (CurvePoint point : points) {
            double volts = point.effectiveVolts();
            assertThat(point.flowM3PerSecond()).isCloseTo(flow(volts), within(1e-12));
            assertThat(point.flowSpread()).isCloseTo(0.02, within(1e-9));
            assertThat(point.motorAmps()).isCloseTo(amps(volts) * (0.9604 + 1 + 1.0404) / 3, within(1e-9));
            assertThat(point.motorAmpsSpread()).isCloseTo(0.04, within(0.0001));
        }
    }

    @Test
    void theGridReachesALittleBeyondTheUnits() {
        List<KnownGoodUnit> units = List.of(unit(1, 2, 4, 7, 10, 12), unit(1, 2.5, 4, 7, 10, 12.5));
        double[] grid = CurveBuilder.grid(units, 5);
        assertThat(grid).hasSize(5).isSorted();
        assertThat(grid[0]).isCloseTo(2.5 - 0.02 * 10, within(1e-12));
        assertThat(grid[4]).isCloseTo(12 + 0.08 * 10, within(1e-12));
        assertThat(CurveBuilder.points(units, grid)).hasSize(5);
    }

    @Test
    void aUnitIsNotReadFarBeyondItsEnds() {
        List<KnownGoodUnit> units = List.of(unit(1, 2, 7, 12), unit(1, 2, 7, 12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurveBuilder.points(units, new double[] {13}))
                .withMessageStartingWith("effective volts is 13.0 V, allowed are ");
    }

    @Test
    void oneUnitIsNoPopulation() {
        List<KnownGoodUnit> units = List.of(unit(1, 2, 7, 12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurveBuilder.grid(units, 5))
                .withMessage("a healthy curve needs at least 2 known-good units, there are 1");
    }

    @Test
    void unitsWithoutACommonRangeAreRefused() {
        List<KnownGoodUnit> units = List.of(unit(1, 2, 3, 4), unit(1, 8, 9, 10));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurveBuilder.grid(units, 5))
                .withMessage(
                        "the known-good units share no range of effective volts: one begins at 7.96 V, another ends"
                                + " at 4.16 V");
    }

    @Test
    void pointsOfAUnitMustAscend() {
        Point point = new Point(3, 1e-4, 5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new KnownGoodUnit(List.of(point, point, point)))
                .withMessage("known-good unit: point 2 does not lie above the one before it");
    }
}
