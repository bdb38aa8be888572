package org.pumpwright.host.trace;

import java.util.Optional;
import org.pumpwright.host.calibration.Calibration;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.CodeRange;
import org.pumpwright.host.calibration.MonitorAmps;
import org.pumpwright.host.calibration.MonitorVolts;
import org.pumpwright.host.calibration.StraightLine;
import org.pumpwright.host.calibration.Thermistor;
import org.pumpwright.host.calibration.UncertaintyParts;
import org.pumpwright.host.quantity.Require;

/**
 * One analogue channel of a stand: what it reads and how its raw readings become physical values. Thread-safe.
 *
 * @param role what the channel reads; its SI unit is the unit of every value here
 * @param index the channel's number on the board, 0 to 3
 * @param calibration from code to value and back, with its uncertainty
 * @param certificate what stands behind the calibration
 */
public record AnalogChannel(ChannelRole role, int index, Calibration calibration, Certificate certificate) {
    /** The highest code that a sample can carry. */
    private static final int HIGHEST_CODE = 65_535;

    public AnalogChannel {
        Require.inRange("analogue channel", index, 0, 3, "");
        requireRole(role, calibration instanceof Thermistor, ChannelRole.WATER_TEMPERATURE, "a thermistor");
        requireRole(role, calibration instanceof MonitorVolts, ChannelRole.VOLTS_AT_PINS, "a monitor's bus voltage");
        requireRole(role, calibration instanceof MonitorAmps, ChannelRole.SUPPLY_AMPS, "a monitor's current");
    }

    private static void requireRole(ChannelRole role, boolean applies, ChannelRole fitting, String what) {
        if (applies && role != fitting) {
            throw new IllegalArgumentException("%s reads %s, not %s".formatted(what, fitting.words(), role.words()));
        }
    }

    /**
     * A channel on a straight line over its converter's whole scale, without days of calibration.
     *
     * @param atZero value at code 0
     * @param span value at full scale less value at code 0, not 0
     * @param gainShare standard uncertainty of the gain, as a share of the distance from the value at code 0
     * @param offsetUncertainty standard uncertainty of the zero
     * @param certificate number of the calibration certificate, or words that say there is none
     */
    public static AnalogChannel straight(
            ChannelRole role,
            int index,
            double atZero,
            double span,
            double gainShare,
            double offsetUncertainty,
            String certificate) {
        UncertaintyParts parts = UncertaintyParts.of(gainShare, offsetUncertainty);
        StraightLine line = new StraightLine(atZero, span, parts, CodeRange.WHOLE);
        return new AnalogChannel(role, index, line, Certificate.undated(certificate));
    }

    /** The physical value of a raw reading, which may be a mean and so have a fraction. */
    public double si(double code) {
        return calibration.si(code);
    }

    /** The physical value of this channel's mean in a sample. */
    public double read(Sample sample) {
        return si(raw(sample));
    }

    /** What is wrong with the sensor by this channel's mean in a sample; empty when nothing shows. */
    public Optional<String> trouble(Sample sample) {
        return calibration.trouble(raw(sample));
    }

    /** The reading that stands for a physical value, held at the ends of what a board's sample can carry. */
    public int code(double si) {
        return (int) Math.round(Math.max(0, Math.min(HIGHEST_CODE, calibration.code(si))));
    }

    /** Standard uncertainty of the calibration at a physical value. */
    public double calibrationUncertainty(double si) {
        return calibration.standardUncertainty(si);
    }

    /** This channel's mean code in a sample. */
    public int raw(Sample sample) {
        return sample.analogs().get(index).mean();
    }
}
