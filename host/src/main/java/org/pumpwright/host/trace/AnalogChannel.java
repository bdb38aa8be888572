package org.pumpwright.host.trace;

import org.pumpwright.host.quantity.Require;

/**
 * How the raw readings of one analogue channel become a physical value: {@code si = atZero + span * code / 65536}. The
 * uncertainty of the calibration has a part that grows with the reading and one that does not. Thread-safe.
 *
 * @param role what the channel reads; its SI unit is the unit of every value here
 * @param index the channel's number on the board, 0 to 3
 * @param atZero value at code 0
 * @param span value at full scale less value at code 0, not 0
 * @param relativeUncertainty standard uncertainty of the gain, as a share of the reading
 * @param offsetUncertainty standard uncertainty of the zero
 * @param certificate number of the calibration certificate, or words that say there is none
 */
public record AnalogChannel(
        ChannelRole role,
        int index,
        double atZero,
        double span,
        double relativeUncertainty,
        double offsetUncertainty,
        String certificate) {
    private static final double FULL_SCALE_CODE = 65_536;

    public AnalogChannel {
        Require.inRange("analogue channel", index, 0, 3, "");
        Require.finite("value at zero", atZero);
        Require.finite("span", span);
        if (span == 0) {
            throw new IllegalArgumentException("span of channel %d is 0, it must not be".formatted(index));
        }
        Require.inRange("relative uncertainty", relativeUncertainty, 0, 1, "");
        Require.inRange("offset uncertainty", offsetUncertainty, 0, Double.MAX_VALUE, role.siUnit());
    }

    /** The physical value of a left-justified reading, which may be a mean and so have a fraction. */
    public double si(double code) {
        return atZero + span * code / FULL_SCALE_CODE;
    }

    /** The physical value of this channel's mean in a sample. */
    public double read(Sample sample) {
        return si(sample.analogs().get(index).mean());
    }

    /** The reading that stands for a physical value, held at the ends of the converter. */
    public int code(double si) {
        double code = (si - atZero) / span * FULL_SCALE_CODE;
        return (int) Math.round(Math.max(0, Math.min(FULL_SCALE_CODE - 1, code)));
    }

    /** Standard uncertainty of the calibration at a physical value: gain and zero, independent. */
    public double calibrationUncertainty(double si) {
        return Math.hypot(relativeUncertainty * (si - atZero), offsetUncertainty);
    }
}
