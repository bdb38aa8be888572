package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.List;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Uncertain;

/**
 * A meter's K against its model's, and whether the two are apart by just what mixed-up units make: litre and US gallon
 * (3.785), imperial and US gallon (1.201), a decimal point. Both figures are exact by definition of the units: 3.785411784 l
 * and 4.54609 l. Thread-safe.
 */
final class KRatio {
    private static final double LITRES_PER_US_GALLON = 3.785411784;
    private static final double US_GALLONS_PER_IMPERIAL = 4.54609 / 3.785411784;

    /** Units of a model differ by a percent or two: a mix-up is taken as one within this share. */
    private static final double NEAR = 0.05;

    private record MixUp(double ratio, String words) {}

    private static final List<MixUp> MIX_UPS = List.of(
            new MixUp(LITRES_PER_US_GALLON, "3.785: pulses per US gallon where pulses per litre are meant"),
            new MixUp(1 / LITRES_PER_US_GALLON, "1/3.785: pulses per litre where pulses per US gallon are meant"),
            new MixUp(US_GALLONS_PER_IMPERIAL, "1.201: imperial and US gallon"),
            new MixUp(1 / US_GALLONS_PER_IMPERIAL, "1/1.201: US and imperial gallon"),
            new MixUp(10, "10: a decimal point"),
            new MixUp(0.1, "1/10: a decimal point"));

    private KRatio() {}

    static List<Finding> of(FindingInput input, Uncertain k) {
        if (input.nominal().pulsesPerM3().isEmpty()) {
            return List.of();
        }
        double nominal = input.nominal().pulsesPerM3().getAsDouble();
        Uncertain over = k.times(1 / nominal);
        String note = format(
                "at half of the highest flow; the model has %.1f pulses/gal", new KFactor(nominal).pulsesPerUsGallon());
        return List.of(
                Finding.figure(MeterKFindings.STEP, "K over nominal", Common.less(over, 1), FindingUnit.SHARE, note),
                Finding.word(
                        MeterKFindings.STEP,
                        "ratio to nominal",
                        MIX_UPS.stream()
                                .filter(mixUp -> Math.abs(over.value() / mixUp.ratio() - 1) < NEAR)
                                .findFirst()
                                .map(MixUp::words)
                                .orElse("none"),
                        format("%.4f", over.value())));
    }
}
