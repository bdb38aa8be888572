package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.WindingTemperature;
import org.pumpwright.host.trace.ChannelRole;

/**
 * Temperature of the winding whenever its resistance was read again: the first reading of the run is taken for the cold one.
 * Thread-safe.
 */
final class WindingFindings {
    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;

    /** A unit that stands in the shop is as warm as the water, or nearly (assumed, rectangular). */
    private static final double NOT_AS_THE_WATER = 5 / Math.sqrt(3);

    /** Where the water's temperature is not measured the shop is taken to have 10 to 30 degrees. */
    private static final Uncertain SHOP = Uncertain.of(20, 10 / Math.sqrt(3));

    private WindingFindings() {}

    static List<Finding> of(FindingInput input) {
        List<Finding> findings = new ArrayList<>();
        Optional<Uncertain> cold = Optional.empty();
        Uncertain coldCelsius = SHOP;
        for (Hold hold : holds(input)) {
            Optional<Uncertain> ohms = StandstillFindings.ohms(input, hold);
            if (ohms.isEmpty()) {
                continue;
            }
            if (cold.isEmpty()) {
                cold = ohms;
                coldCelsius = celsius(input.times(hold).get(0));
                continue;
            }
            findings.add(Finding.figure(
                    hold.name(),
                    "winding temperature",
                    WindingTemperature.celsius(ohms.get(), cold.get(), coldCelsius),
                    FindingUnit.CELSIUS,
                    format(
                            "%.3f ohm, %.3f ohm at %.0f degrees cold; brushes and leads make it seem too cool",
                            ohms.get().value(), cold.get().value(), coldCelsius.value())));
        }
        return findings;
    }

    private static List<Hold> holds(FindingInput input) {
        return input.plan().steps().stream()
                .filter(Hold.class::isInstance)
                .map(Hold.class::cast)
                .filter(hold -> hold.reads() == Reading.STANDSTILL)
                .toList();
    }

    private static Uncertain celsius(Window window) {
        return window.mean(ChannelRole.WATER_TEMPERATURE)
                .map(kelvin -> new Uncertain(
                                kelvin.value() - KELVIN_AT_ZERO_CELSIUS,
                                kelvin.standardUncertainty(),
                                kelvin.degreesOfFreedom())
                        .with(NOT_AS_THE_WATER, Double.POSITIVE_INFINITY))
                .orElse(SHOP);
    }
}
