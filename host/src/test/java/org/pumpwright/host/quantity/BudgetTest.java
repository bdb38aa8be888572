package org.pumpwright.host.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Held to the worked examples of JCGM 100:2008, the "GUM". */
final class BudgetTest {
    private static final double EXACT = Double.POSITIVE_INFINITY;

    /** H.2, table H.2: means and their standard uncertainties, each from the same 5 sets of observations. */
    private static final List<BudgetInput> VOLTS_AMPS_PHASE = List.of(
            new BudgetInput("volts", new Uncertain(4.9990, 0.0032094, 4)),
            new BudgetInput("amps", new Uncertain(0.019661, 0.0000094710, 4)),
            new BudgetInput("phase", new Uncertain(1.04446, 0.00075206, 4)));

    /** H.2, table H.2: the published coefficients -0.36, 0.86, -0.65 with the digits of the observations. */
    private static final List<Correlation> TOGETHER = List.of(
            new Correlation("volts", "amps", -0.355311),
            new Correlation("volts", "phase", 0.857624),
            new Correlation("amps", "phase", -0.645111));

    @Test
    void theEndGaugeComesOutAsPublished() {
        // H.1: lengths in nm; the standard, the mean difference of table H.1, and two zero estimates with their
        // rectangular half-widths of 1e-6 /K and 0.05 K; alpha_s and theta have sensitivity 0.
        double standard = 50_000_623;
        Uncertain difference = new Uncertain(215, 5.8, 24).with(3.9, 5).with(6.7, 8);
        Budget length = Budget.of(
                standard + 215,
                List.of(
                        new BudgetLine("standard", 25, 18, 1),
                        new BudgetLine(
                                "difference", difference.standardUncertainty(), difference.degreesOfFreedom(), 1),
                        new BudgetLine("expansion of the standard", 2e-6 / Math.sqrt(3), EXACT, 0),
                        new BudgetLine("temperature", 0.41, EXACT, 0),
                        new BudgetLine("difference of expansion", 1e-6 / Math.sqrt(3), 50, standard * 0.1),
                        new BudgetLine("difference of temperature", 0.05 / Math.sqrt(3), 2, -standard * 1.15e-5)));

        assertThat(difference.standardUncertainty()).isCloseTo(9.7, within(0.05));
        assertThat(difference.degreesOfFreedom()).isCloseTo(25.6, within(0.2));
        assertThat(length.lines().get(4).contribution()).isCloseTo(2.9, within(0.05));
        assertThat(length.lines().get(5).contribution()).isCloseTo(-16.6, within(0.05));
        assertThat(square(length.standardUncertainty())).isCloseTo(1002, within(1.0));
        assertThat(length.standardUncertainty()).isCloseTo(32, within(0.5));
        assertThat(Math.floor(length.degreesOfFreedom())).isEqualTo(16);
        // H.1.6: t99(16) = 2.92, U99 = 93 nm, l = 50.000838 mm.
        double k = CoverageFactor.of(0.99, Math.floor(length.degreesOfFreedom()));
        assertThat(k).isCloseTo(2.92, within(0.005));
        assertThat(k * length.standardUncertainty()).isCloseTo(93, within(0.6));
        assertThat(length.value()).isEqualTo(50_000_838);
    }

    @Test
    void resistanceReactanceAndImpedanceComeOutAsPublished() {
        Budget resistance = Budget.through(VOLTS_AMPS_PHASE, TOGETHER, x -> x[0] / x[1] * Math.cos(x[2]));
        Budget reactance = Budget.through(VOLTS_AMPS_PHASE, TOGETHER, x -> x[0] / x[1] * Math.sin(x[2]));
        Budget impedance = Budget.through(VOLTS_AMPS_PHASE, TOGETHER, x -> x[0] / x[1]);

        // Table H.3: R = 127.732(71), X = 219.847(295), Z = 254.260(236) ohm. The printed 0.295 is cut off, not
        // rounded: the data give 0.2956.
        assertThat(resistance.value()).isCloseTo(127.732, within(0.0005));
        assertThat(resistance.standardUncertainty()).isCloseTo(0.071, within(0.0005));
        assertThat(reactance.value()).isCloseTo(219.847, within(0.0006));
        assertThat(reactance.standardUncertainty()).isCloseTo(0.295, within(0.001));
        assertThat(impedance.value()).isCloseTo(254.260, within(0.0006));
        assertThat(impedance.standardUncertainty()).isCloseTo(0.236, within(0.0005));
        // r(R,X) = -0.588, r(R,Z) = -0.485, r(X,Z) = 0.993.
        assertThat(resistance.correlation(reactance)).isCloseTo(-0.588, within(0.0006));
        assertThat(resistance.correlation(impedance)).isCloseTo(-0.485, within(0.0006));
        assertThat(reactance.correlation(impedance)).isCloseTo(0.993, within(0.0006));
        assertThat(resistance.correlation(resistance)).isCloseTo(1, within(1e-14));
        // All three come from the same five sets of observations.
        assertThat(resistance.degreesOfFreedom()).isCloseTo(4, within(1e-9));
    }

    @Test
    void withoutItsCorrelationsTheExampleIsWrongAsPublished() {
        // Table H.5: u(R) = 0.195, u(X) = 0.201, u(Z) = 0.204 ohm; r(R,X) = 0.056.
        Budget resistance = Budget.through(VOLTS_AMPS_PHASE, List.of(), x -> x[0] / x[1] * Math.cos(x[2]));
        Budget reactance = Budget.through(VOLTS_AMPS_PHASE, List.of(), x -> x[0] / x[1] * Math.sin(x[2]));
        Budget impedance = Budget.through(VOLTS_AMPS_PHASE, List.of(), x -> x[0] / x[1]);

        assertThat(resistance.standardUncertainty()).isCloseTo(0.195, within(0.0006));
        assertThat(reactance.standardUncertainty()).isCloseTo(0.201, within(0.0006));
        assertThat(impedance.standardUncertainty()).isCloseTo(0.204, within(0.0006));
        assertThat(resistance.correlation(reactance)).isCloseTo(0.056, within(0.0006));
    }

    @Test
    void aProductOfThreeHasThePublishedDegreesOfFreedom() {
        // G.4.1, example: relative 0.25, 0.57, 0.82 % from 10, 5, 15 readings: u = 1.03 %, nu = 19.0, t95 = 2.09,
        // U95 = 2.2 %.
        Budget product = Budget.of(
                1,
                List.of(
                        new BudgetLine("x1", 0.25, 9, 1),
                        new BudgetLine("x2", 0.57, 4, 1),
                        new BudgetLine("x3", 0.82, 14, 1)));

        assertThat(product.standardUncertainty()).isCloseTo(1.03, within(0.005));
        assertThat(product.degreesOfFreedom()).isCloseTo(19.0, within(0.05));
        assertThat(product.expanded(0.95)).isCloseTo(2.2, within(0.05));
    }

    @Test
    void correlatedInputsEnterTheDegreesOfFreedomAsOne() {
        Budget sum = new Budget(
                0,
                List.of(new BudgetLine("a", 1, 4, 1), new BudgetLine("b", 2, EXACT, 1), new BudgetLine("c", 1, 9, 1)),
                List.of(new Correlation("c", "a", 1)));

        // a and c are one input of 2 with 4 degrees of freedom: 8^2 / (4^2/4) = 16.
        assertThat(sum.standardUncertainty()).isCloseTo(Math.sqrt(8), within(1e-14));
        assertThat(sum.degreesOfFreedom()).isCloseTo(16, within(1e-12));
    }

    @Property(seed = "7")
    void twoFullyCorrelatedInputsAddTheirContributions(
            @ForAll @DoubleRange(min = 0.01, max = 10) double u1,
            @ForAll @DoubleRange(min = 0.01, max = 10) double u2) {
        List<BudgetLine> lines = List.of(new BudgetLine("a", u1, EXACT, 2), new BudgetLine("b", u2, EXACT, -1));

        assertThat(new Budget(0, lines, List.of(new Correlation("a", "b", 1))).standardUncertainty())
                .isCloseTo(Math.abs(2 * u1 - u2), within(1e-6));
        assertThat(new Budget(0, lines, List.of(new Correlation("b", "a", -1))).standardUncertainty())
                .isCloseTo(2 * u1 + u2, within(1e-12));
    }

    @Test
    void anExactInputHasASensitivityAndNoContribution() {
        Budget cube = Budget.through(
                List.of(new BudgetInput("edge", Uncertain.of(2, 0))), List.of(), x -> x[0] * x[0] * x[0]);

        assertThat(cube.lines().get(0).sensitivity()).isCloseTo(12, within(1e-6));
        assertThat(cube.result()).isEqualTo(new Uncertain(8, 0, EXACT));
    }

    @Test
    void aBudgetThatCannotBeIsRefused() {
        List<BudgetLine> lines =
                List.of(new BudgetLine("a", 1, 4, 1), new BudgetLine("b", 1, 4, 1), new BudgetLine("c", 1, 4, 1));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Budget(
                        0,
                        lines,
                        List.of(
                                new Correlation("a", "b", -1),
                                new Correlation("b", "c", -1),
                                new Correlation("c", "a", -1))))
                .withMessageContaining("contradict each other");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Budget(0, lines, List.of(new Correlation("a", "d", 0.5))))
                .withMessage("d is correlated but not in the budget");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new Budget(0, lines, List.of(new Correlation("a", "b", 0.5), new Correlation("b", "a", 0.4))))
                .withMessage("the correlation of b and a is given twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Budget.of(0, List.of(lines.get(0), lines.get(0))))
                .withMessage("a is in the budget twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Budget.of(0, List.of()))
                .withMessage("a budget needs at least one input");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Correlation("a", "b", 1.1))
                .withMessageContaining("correlation of a and b is 1.1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BudgetLine("a", -1, 4, 1))
                .withMessageContaining("standard uncertainty of a is -1.0");
    }

    private static double square(double x) {
        return x * x;
    }
}
