package org.pumpwright.host.calibration;

import java.util.Locale;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Temperature;

/**
 * An NTC thermistor to ground with a known resistor up to the converter's reference: {@code share = R / (R + R_up)}, so
 * {@code R = R_up share / (1 - share)}, and the temperature by Steinhart and Hart. It holds within the range its curve was
 * fitted to; outside, the value stays at the range's end and the sensor is in trouble. An open thermistor reads as far too
 * cold, a shorted one as far too hot. The gain's share is of the resistance (the resistor's and the thermistor's own): it is
 * carried to kelvin by {@code dT/d(ln R) = -T^2 (b + 3 c (ln R)^2)}. Thread-safe.
 *
 * @param curve resistance and temperature
 * @param pullUpOhms the resistor to the reference, ohm
 * @param leastKelvin coldest end of the fitted range
 * @param mostKelvin hottest end of the fitted range
 * @param parts standard uncertainties
 */
public record Thermistor(
        SteinhartHart curve, double pullUpOhms, double leastKelvin, double mostKelvin, UncertaintyParts parts)
        implements Calibration {
    public Thermistor {
        Require.inRange("pull-up resistor", pullUpOhms, 1, 1e8, "ohm");
        Require.inRange("cold end of the fitted range", leastKelvin, 100, 700, "K");
        Require.inRange("hot end of the fitted range", mostKelvin, 100, 700, "K");
        if (!(leastKelvin < mostKelvin)) {
            throw new IllegalArgumentException(
                    "the fitted range runs from %s to %s K, the first must be below the second"
                            .formatted(leastKelvin, mostKelvin));
        }
    }

    @Override
    public String kind() {
        return "thermistor";
    }

    @Override
    public double si(double code) {
        double share = sound().held(code) / FULL_SCALE;
        return Math.max(leastKelvin, Math.min(mostKelvin, curve.kelvin(ohms(share))));
    }

    @Override
    public double code(double si) {
        double ohms = curve.ohms(Math.max(leastKelvin, Math.min(mostKelvin, si)));
        return ohms / (ohms + pullUpOhms) * FULL_SCALE;
    }

    @Override
    public double siPerCode(double code) {
        double share = sound().held(code) / FULL_SCALE;
        return curve.kelvinPerLnOhms(ohms(share)) / (share * (1 - share)) / FULL_SCALE;
    }

    @Override
    public double standardUncertainty(double si) {
        double code = code(si);
        double gain = parts.gainShare() * curve.kelvinPerLnOhms(ohms(code / FULL_SCALE));
        return parts.combined(gain, parts.stepCodes() * siPerCode(code));
    }

    @Override
    public CodeRange sound() {
        return new CodeRange(code(mostKelvin), code(leastKelvin));
    }

    @Override
    public String lowWords() {
        return "shorted, or hotter than the " + celsius(mostKelvin) + " to which its curve was fitted";
    }

    @Override
    public String highWords() {
        return "wire off, or colder than the " + celsius(leastKelvin) + " to which its curve was fitted";
    }

    private double ohms(double share) {
        return pullUpOhms * share / (1 - share);
    }

    private static String celsius(double kelvin) {
        return String.format(Locale.ROOT, "%.1f °C", new Temperature(kelvin).celsius());
    }
}
