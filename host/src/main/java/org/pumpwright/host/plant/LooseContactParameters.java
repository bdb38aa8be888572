package org.pumpwright.host.plant;

/**
 * A contact that opens at random for 0.05 to 2 s: more often the warmer the winding, and far more often while somebody
 * moves the wire. Assumed values, common practice, no source. Thread-safe.
 *
 * @param opensPerMinute how often at 20 °C with the wire at rest; 0 for a firm contact
 * @param kelvinToDouble by how much the winding must warm for twice as many
 * @param wiggledFactor how many times as often while the wire is moved
 */
public record LooseContactParameters(double opensPerMinute, double kelvinToDouble, double wiggledFactor) {

    public LooseContactParameters {
        Range.check("openings", opensPerMinute, 0, 1000, "per min");
        Range.check("warming that doubles them", kelvinToDouble, 1, 1000, "K");
        Range.check("factor of moving", wiggledFactor, 1, 1000, "");
    }

    /** Opens this often; twice as often for each 20 K, and twenty times as often while moved. */
    static LooseContactParameters opening(double perMinute) {
        return new LooseContactParameters(perMinute, 20, 20);
    }

    /** Never opens. */
    static LooseContactParameters firm() {
        return opening(0);
    }

    /** How many times as often it opens now. */
    double provoked(double windingKelvin, boolean wiggled) {
        double warmer = windingKelvin - UsUnits.ZERO_CELSIUS_KELVIN - 20;
        return StrictMath.pow(2, warmer / kelvinToDouble) * (wiggled ? wiggledFactor : 1);
    }
}
