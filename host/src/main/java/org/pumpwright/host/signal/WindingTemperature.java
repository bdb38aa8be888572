package org.pumpwright.host.signal;

import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Temperature of a copper winding from its resistance hot and cold. Copper's resistance grows by 0.00393 a kelvin of its
 * value at 20 degrees (IEC 60028 for annealed copper, from memory), so
 * {@code T = R / R_cold (T_cold + 234.45) - 234.45}. Brushes and leads in the reading do not grow with it: they make the
 * winding seem cooler than it is. Thread-safe.
 */
public final class WindingTemperature {
    /** Relative change of copper's resistance per kelvin, of the value at 20 degrees Celsius. */
    public static final double COPPER_PER_KELVIN = 0.00393;

    private static final double NO_RESISTANCE_BELOW_ZERO = 1 / COPPER_PER_KELVIN - 20;

    private WindingTemperature() {}

    /**
     * Degrees Celsius.
     *
     * @param hotOhms resistance now, above 0
     * @param coldOhms resistance of the same path cold, above 0
     * @param coldCelsius temperature it had then
     * @throws IllegalArgumentException when a resistance is not above 0
     */
    public static Uncertain celsius(Uncertain hotOhms, Uncertain coldOhms, Uncertain coldCelsius) {
        Require.inRange("resistance hot", hotOhms.value(), Double.MIN_NORMAL, 1e9, "ohm");
        Require.inRange("resistance cold", coldOhms.value(), Double.MIN_NORMAL, 1e9, "ohm");
        double ratio = hotOhms.value() / coldOhms.value();
        double span = ratio * (coldCelsius.value() + NO_RESISTANCE_BELOW_ZERO);
        return new Uncertain(span - NO_RESISTANCE_BELOW_ZERO, span * hotOhms.relative(), hotOhms.degreesOfFreedom())
                .with(span * coldOhms.relative(), coldOhms.degreesOfFreedom())
                .with(ratio * coldCelsius.standardUncertainty(), coldCelsius.degreesOfFreedom());
    }
}
