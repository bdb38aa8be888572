package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.Budget;
import org.pumpwright.host.quantity.BudgetLine;

/** What the thermometer's line of JCGM 100:2008, H.3, tells away from its middle, where its parts go together. */
final class LineUncertaintyTest {
    /** Table H.6: degrees Celsius above the reference of 20. */
    private static final double[] ABOVE_20 = {
        1.521, 2.012, 2.512, 3.003, 3.507, 3.999, 4.513, 5.002, 5.503, 6.010, 6.511
    };

    private static final double[] CORRECTION = {
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };

    private final LineFit line = LineFit.of(ABOVE_20, CORRECTION);
    private final double middle = Arrays.stream(ABOVE_20).sum() / ABOVE_20.length;

    @Test
    void interceptAndSlopeHaveThePublishedUncertaintiesAndCorrelation() {
        // H.3.3: u(y1) = 0.0029 at 20 degrees, u(y2) = 0.00067, r(y1, y2) = -0.930.
        Budget slope = Budget.of(line.slope(), List.of(slopeLine(1)));
        Budget intercept = at(0);

        assertThat(intercept.standardUncertainty()).isCloseTo(0.0029, within(0.00005));
        assertThat(slope.standardUncertainty()).isCloseTo(0.00067, within(0.000005));
        assertThat(intercept.correlation(slope)).isCloseTo(-0.930, within(0.0005));
    }

    @Test
    void aPredictionOutsideHasThePublishedUncertainty() {
        // H.3.4: b(30) = -0.1494 with 0.0041 and 9 degrees of freedom.
        Budget at30 = at(10);

        assertThat(at30.value()).isCloseTo(-0.1494, within(0.00005));
        assertThat(at30.standardUncertainty()).isCloseTo(0.0041, within(0.00005));
        // Both parts come from one scatter; taken as independent they would claim more than 9 degrees of freedom.
        assertThat(line.degreesOfFreedom()).isEqualTo(9);
    }

    @Test
    void theMiddleOfTheLineHasThePublishedUncertainty() {
        // H.3.5: about the mean of 24.0085 degrees, y1 = -0.1625 with 0.0011.
        assertThat(20 + middle).isCloseTo(24.0085, within(0.00005));
        assertThat(at(middle).value()).isCloseTo(-0.1625, within(0.00005));
        assertThat(at(middle).standardUncertainty()).isCloseTo(0.0011, within(0.00005));
    }

    /** Mean and slope of a least-squares line are uncorrelated. */
    private Budget at(double above20) {
        double ofMean = line.scatter() / Math.sqrt(ABOVE_20.length);
        return Budget.of(
                line.at(above20),
                List.of(new BudgetLine("mean", ofMean, line.degreesOfFreedom(), 1), slopeLine(above20 - middle)));
    }

    private BudgetLine slopeLine(double sensitivity) {
        return new BudgetLine("slope", line.slopeUncertainty(line.scatter()), line.degreesOfFreedom(), sensitivity);
    }
}
