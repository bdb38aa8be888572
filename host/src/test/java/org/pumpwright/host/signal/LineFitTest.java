package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class LineFitTest {
    private static final double[] TEMPERATURE = {
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    private static final double[] CORRECTION = {
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };

    /** The thermometer of JCGM 100:2008, H.3: y1 = -0.1712 at 20, y2 = 0.00218, u(y2) = 0.00067, s = 0.0035, b(30). */
    @Test
    void theThermometerOfTheGuideComesOut() {
        double[] above20 = Arrays.stream(TEMPERATURE).map(t -> t - 20).toArray();
        LineFit line = LineFit.of(above20, CORRECTION);
        assertThat(line.slope()).isCloseTo(0.00218, within(0.000005));
        assertThat(line.at(0)).isCloseTo(-0.1712, within(0.00005));
        assertThat(line.at(10)).isCloseTo(-0.1494, within(0.00005));
        assertThat(line.scatter()).isCloseTo(0.0035, within(0.00005));
        assertThat(line.slopeUncertainty(line.scatter())).isCloseTo(0.00067, within(0.000005));
        assertThat(line.degreesOfFreedom()).isEqualTo(9);
        assertThat(line.residuals()[3]).isCloseTo(0.0056, within(0.00006));
    }

    @Test
    void twoPointsLeaveNothingToJudgeTheLineBy() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LineFit.of(new double[] {1, 2}, new double[] {1, 2}))
                .withMessage("a line is fitted to 2 x and 2 y, it needs at least 3 of both");
    }

    @Test
    void pointsAtOneXHaveNoLine() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LineFit.of(new double[] {2, 2, 2}, new double[] {1, 2, 3}))
                .withMessage("a line needs points at different x, all are at 2.0");
    }
}
