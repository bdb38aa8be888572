package org.pumpwright.host.calibration;

import java.util.Optional;

/**
 * How the raw reading (code) of an analogue channel becomes a physical value in SI, and back. Codes of a converter are
 * left-justified: 65536 would be its reference. Codes of a monitor chip are its registers as they are. Within
 * {@link #sound()} every kind rises or falls all the way, so that a value has one code. Thread-safe.
 */
public sealed interface Calibration
        permits StraightLine, Polynomial, Ratiometric, Thermistor, MonitorVolts, MonitorAmps {
    /** The code that would stand for the converter's reference. */
    double FULL_SCALE = 65_536;

    /** What kind of calibration it is, in a word or two. */
    String kind();

    /** The physical value of a code, which may be a mean and so have a fraction. */
    double si(double code);

    /** The code that stands for a physical value, not rounded. */
    double code(double si);

    /** Change of the value with the code, SI unit per code; the sensitivity coefficient of JCGM 100, 5.1.3. */
    double siPerCode(double code);

    /** Standard uncertainty of the calibration at a physical value: gain, zero, fit and converter step, independent. */
    double standardUncertainty(double si);

    /** The codes that a sound sensor gives. */
    CodeRange sound();

    /** What a code below the sound ones means. */
    String lowWords();

    /** What a code above the sound ones means. */
    String highWords();

    /** What is wrong with the sensor when it gives this code; empty when nothing shows. */
    default Optional<String> trouble(double code) {
        if (code < sound().least()) {
            return Optional.of(lowWords());
        }
        return code > sound().most() ? Optional.of(highWords()) : Optional.empty();
    }
}
