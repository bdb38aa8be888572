package org.pumpwright.host.catalog;

import java.util.stream.Stream;

/** The kinds of unit that the stand can test. Thread-safe. */
public enum UnitKind {
    /** Diaphragm pump on 12 V, driven by PWM. */
    PUMP_12V("pump-12v", "12 V diaphragm pump"),
    /** Product pump on a hydraulic motor behind a proportional valve, whose coil is driven by PWM. */
    HYDRAULIC_PUMP("hydraulic-pump", "hydraulically driven pump with proportional valve"),
    /** Module that makes PWM out of a supply and a command. */
    DRIVER("driver", "PWM driver"),
    /** Flow meter that gives pulses. */
    METER("meter", "pulse flow meter"),
    /** Leads, plugs and fuse between battery and unit. */
    HARNESS("harness", "harness");

    private final String word;
    private final String words;

    UnitKind(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** The kind as it is written in files. */
    public String word() {
        return word;
    }

    /**
     * The kind that is written with this word in files.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static UnitKind ofWord(String word) {
        return Stream.of(values())
                .filter(kind -> kind.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no kind of unit is called " + word));
    }

    /** The kind for people. */
    public String words() {
        return words;
    }
}
