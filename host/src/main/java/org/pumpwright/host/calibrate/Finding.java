package org.pumpwright.host.calibrate;

/**
 * Something that a reader of the result must know. It does not stop the result. Thread-safe.
 *
 * @param kind what sort of thing
 * @param sentence for a person
 */
public record Finding(Kind kind, String sentence) {
    /** What sort of thing a finding is. */
    public enum Kind {
        /** The runs at a flow lie further apart than the gate allows. */
        GATE_FAILED,
        /** A run lies further off than chance makes likely; whether to leave it out is a person's question. */
        OUTLIER_QUESTION,
        /** A run was left out, and why. */
        RUN_LEFT_OUT,
        /** K differs between the passes over the flows. */
        HYSTERESIS,
        /** The first flow gave another K at the end. */
        FIRST_FLOW_MOVED,
        /** K falls off at low flow. */
        FALLS_OFF,
        /** The one K is for flows at which nothing was measured. */
        BEYOND_FLOWS,
        /** The lowest flow is too near to where the rotor starts. */
        NEAR_START,
        /** The usual law does not describe the points, a table does. */
        NOT_FITTED,
        /** K is not what it was. */
        CHANGED,
        /** K differs from what was expected by the ratio of two units. */
        UNIT_MIX,
        /** A run is too short for the way it begins and ends. */
        SHORT_RUN,
        /** Too few pulses were counted. */
        FEW_PULSES,
        /** The scale is too coarse for what was caught. */
        COARSE_SCALE,
        /** One K over the whole range is off by too much. */
        RANGE_TOO_WIDE
    }
}
