package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.Hysteresis.Point;

class HysteresisTest {
    private static final double[] DUTIES = {0.2, 0.4, 0.6, 0.8, 1.0};
    private static final double U = 0.01;

    /** A sweep of 10 s a point whose values grow by a share a second, the way down higher by so much at 60 %. */
    private record Sweep(List<Point> up, List<Point> down, Point again) {
        static Sweep of(double warmUp, double higher, Random random) {
            List<Point> up = new ArrayList<>();
            List<Point> down = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                up.add(point(i, 10 * i, 0, warmUp, random));
            }
            for (int i = 3; i >= 0; i--) {
                down.add(point(i, 10 * (8 - i), i == 2 ? higher : 0, warmUp, random));
            }
            return new Sweep(up, down, point(0, 90, 0, warmUp, random));
        }

        private static Point point(int i, double seconds, double more, double warmUp, Random random) {
            double value = (20 * DUTIES[i] + more) * (1 + warmUp * seconds) + U * random.nextGaussian();
            return new Point(DUTIES[i], seconds, Uncertain.of(value, U));
        }

        Hysteresis hysteresis() {
            return Hysteresis.of(up, down, again, 20);
        }
    }

    @Test
    void theWayDownIsHeldAgainstTheWayUp() {
        Hysteresis found = Sweep.of(0, 1.4, new Random(1)).hysteresis();
        assertThat(found.share().value())
                .isCloseTo(0.07, within(4 * found.share().standardUncertainty()));
        assertThat(found.share().standardUncertainty()).isLessThan(0.002);
        assertThat(found.duty()).isEqualTo(0.6);
    }

    /** Warming by 10 % over the sweep alone would look like 5 % of hysteresis. */
    @Test
    void warmingIsNoHysteresis() {
        Hysteresis found = Sweep.of(0.001, 0, new Random(2)).hysteresis();
        assertThat(found.warmUpPerSecond().value()).isCloseTo(0.001, within(0.0002));
        assertThat(Math.abs(found.share().value())).isLessThan(3 * found.share().standardUncertainty());
        assertThat(found.share().standardUncertainty()).isLessThan(0.003);
    }

    @Test
    void theStatedUncertaintyIsThatOfManySweeps() {
        Random random = new Random(3);
        double[] shares = new double[2000];
        double claimed = 0;
        for (int i = 0; i < shares.length; i++) {
            Hysteresis found = Sweep.of(0.0005, 2, random).hysteresis();
            shares[i] = found.share().value();
            claimed += found.share().standardUncertainty() / shares.length;
        }
        assertThat(claimed / Statistics.deviation(shares)).isBetween(0.93, 1.07);
    }

    @Property(seed = "20260206", tries = 50)
    void theShareIsFreeOfTheUnit(@ForAll @DoubleRange(min = 0.01, max = 100) double unit) {
        Sweep sweep = Sweep.of(0.001, 1, new Random(4));
        Hysteresis scaled = Hysteresis.of(
                sweep.up().stream().map(p -> times(p, unit)).toList(),
                sweep.down().stream().map(p -> times(p, unit)).toList(),
                times(sweep.again(), unit),
                20 * unit);
        assertThat(scaled.share().value()).isCloseTo(sweep.hysteresis().share().value(), within(1e-9));
    }

    private static Point times(Point point, double unit) {
        return new Point(point.duty(), point.seconds(), point.value().times(unit));
    }

    @Test
    void aFirstPointWithoutFlowTellsNoWarming() {
        List<Point> up = List.of(new Point(0.1, 0, Uncertain.of(0, 0.1)), new Point(0.5, 10, Uncertain.of(10, 0.1)));
        List<Point> down = List.of(new Point(0.5, 30, Uncertain.of(11, 0.1)));
        Hysteresis found = Hysteresis.of(up, down, new Point(0.1, 40, Uncertain.of(0, 0.1)), 20);
        assertThat(found.share().value()).isCloseTo(0.05, within(1e-12));
        assertThat(found.warmUpPerSecond()).isEqualTo(Uncertain.of(0, 0));
    }

    @Test
    void anotherPointIsNoRepetition() {
        List<Point> up = List.of(new Point(0.1, 0, Uncertain.of(1, 0.1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Hysteresis.of(up, up, new Point(0.2, 40, Uncertain.of(0, 0.1)), 20))
                .withMessage("the repeated point at duty 0.2 and 40.0 s does not repeat the first");
    }
}
