package org.pumpwright.host.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.FeatureJudgement.Decision;
import org.pumpwright.host.grade.Judgements;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.Leg;

class FeaturePrinterTest {
    private static final FeaturePrinter US = new FeaturePrinter(UnitSystem.US);
    private static final FeaturePrinter METRIC = new FeaturePrinter(UnitSystem.METRIC);

    private static FeatureJudgement flow(double gallonsPerMinute, Decision decision, boolean judged) {
        double gpm = FlowRate.ofGallonsPerMinute(1).m3PerSecond();
        return Judgements.of(
                Feature.at(Feature.Kind.FLOW, Duty.ofPercent(50), Leg.UP),
                6.5,
                Uncertain.of(gallonsPerMinute * gpm, 0.0247 * gpm),
                new Band(1.91 * gpm, 2.06 * gpm, 2.21 * gpm),
                0.04 * gpm,
                decision,
                judged);
    }

    @Test
    void figuresHaveDecimalPointsOnAMachineThatWritesDecimalCommas() {
        assertThat(Locale.getDefault()).isEqualTo(Locale.GERMANY);
        FeatureJudgement low = flow(1.49, Decision.LOW, true);
        assertThat(US.measured(low)).isEqualTo("1.49 gal/min");
        assertThat(US.limits(low)).isEqualTo("1.91 to 2.21");
        assertThat(US.deviation(low)).isEqualTo("-27.7");
        assertThat(US.expandedUncertainty(low)).isEqualTo("2.4");
        assertThat(US.volts(13.155)).isEqualTo("13.16");
    }

    @Test
    void metricFiguresAreLitresAndTheDeviationStays() {
        FeatureJudgement low = flow(1.49, Decision.LOW, true);
        assertThat(METRIC.measured(low)).isEqualTo("5.64 L/min");
        assertThat(METRIC.limits(low)).isEqualTo("7.23 to 8.37");
        assertThat(METRIC.deviation(low)).isEqualTo(US.deviation(low));
    }

    @Test
    void ampsAreTheSameInBothSystems() {
        FeatureJudgement amps = Judgements.of(
                Feature.at(Feature.Kind.MOTOR_AMPS, Duty.FULL, Leg.UP),
                13,
                Uncertain.of(1.8, 0.03),
                new Band(2, 2.6, 3.2),
                0.05,
                Decision.LOW,
                true);
        assertThat(US.measured(amps)).isEqualTo("1.80 A").isEqualTo(METRIC.measured(amps));
    }

    @ParameterizedTest
    @CsvSource({
        "INSIDE, true, FAIL, pass",
        "LOW, true, FAIL, FAIL low",
        "HIGH, true, FAIL, FAIL high",
        "NEAR_LOW, true, INCONCLUSIVE, near low",
        "NEAR_HIGH, true, INCONCLUSIVE, near high",
        "INSIDE, false, PASS, (inside)",
        "LOW, false, PASS, (low)",
        "HIGH, false, PASS, (high)",
        "NEAR_LOW, false, PASS, (near low)",
        "NEAR_HIGH, false, PASS, (near high)",
        "LOW, true, INVALID, not judged",
        "LOW, true, NOT_TESTED, not judged"
    })
    void decisionsHaveWords(Decision decision, boolean judged, Verdict verdict, String words) {
        assertThat(US.decision(flow(2, decision, judged), verdict)).isEqualTo(words);
    }

    @Test
    void aZeroHasNoSignOfMinus() {
        assertThat(US.number(Feature.Kind.MOTOR_AMPS, -0.001)).isEqualTo("0.00");
        assertThat(US.deviation(flow(2.0599, Decision.INSIDE, true))).isEqualTo("+0.0");
    }

    @Test
    void whatIsNotANumberIsNotKnown() {
        FeatureJudgement odd = Judgements.of(
                Feature.at(Feature.Kind.FLOW, Duty.ZERO, Leg.UP),
                Double.NaN,
                Uncertain.of(0, 0),
                new Band(0, 0, 0),
                0,
                Decision.INSIDE,
                true);
        assertThat(US.deviation(odd)).isEqualTo("not known");
        assertThat(US.expandedUncertainty(odd)).isEqualTo("not known");
        assertThat(US.volts(odd.volts())).isEqualTo("not known");
        assertThat(US.number(Feature.Kind.FLOW, Double.POSITIVE_INFINITY)).isEqualTo("not known");
    }
}
