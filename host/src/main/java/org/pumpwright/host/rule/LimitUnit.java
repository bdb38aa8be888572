package org.pumpwright.host.rule;

import java.util.stream.Stream;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Volume;

/** The units that a limit of a reading may be written in, each with the unit that readings are kept in. Thread-safe. */
public enum LimitUnit {
    PERCENT("percent", "share", 0.01),
    SECONDS("seconds", "seconds", 1),
    VOLTS("volts", "volts", 1),
    AMPS("amps", "amps", 1),
    OHMS("ohms", "ohms", 1),
    MILLIOHMS("milliohms", "ohms", 1e-3),
    PSI("psi", "pascals", Pressure.PASCALS_PER_PSI),
    KILOPASCALS("kilopascals", "pascals", 1e3),
    CELSIUS("celsius", "celsius", 1),
    HERTZ("hertz", "hertz", 1),
    GALLONS_PER_MINUTE("gpm", "m3_per_second", FlowRate.ofGallonsPerMinute(1).m3PerSecond()),
    LITRES_PER_MINUTE("lpm", "m3_per_second", 1e-3 / 60),
    PULSES_PER_GALLON("pulses_per_us_gallon", "pulses_per_m3", 1 / Volume.M3_PER_US_GALLON),
    PULSES_PER_LITRE("pulses_per_litre", "pulses_per_m3", 1e3),
    /** A plain number. */
    NUMBER("number", "number", 1);

    private final String word;
    private final String keptIn;
    private final double factor;

    LimitUnit(String word, String keptIn, double factor) {
        this.word = word;
        this.keptIn = keptIn;
        this.factor = factor;
    }

    /**
     * The unit that is written with this word in files.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static LimitUnit ofWord(String word) {
        return Stream.of(values())
                .filter(unit -> unit.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no unit of limits is called " + word));
    }

    /** The unit as it is written in files. */
    public String word() {
        return word;
    }

    /** The word of the unit that readings of this kind are kept in: SI. */
    public String keptIn() {
        return keptIn;
    }

    /** A number of this unit in the unit that readings are kept in. */
    public double kept(double number) {
        return number * factor;
    }
}
