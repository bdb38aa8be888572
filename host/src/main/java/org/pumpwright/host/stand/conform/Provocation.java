package org.pumpwright.host.stand.conform;

/**
 * Something that has to happen to a board from outside. Thread-safe.
 *
 * @param cause what
 * @param value of an input or the feedback 1 for closed, 0 for open; of the converter 1 for running, 0 for stopped; of a reading its left-justified code; of the meter
 *     its pulses per second; {@link #AUTO} to let feedback, reading or meter go their own way again
 */
public record Provocation(Cause cause, int value) {
    /** By itself, as when nothing is provoked. */
    public static final int AUTO = -1;

    /** What can happen to a board. */
    public enum Cause {
        EMERGENCY_STOP("estop", "open the emergency stop"),
        GUARD("guard", "open the guard"),
        LEVEL("level", "open the level contact"),
        OVERRIDE("override", "put the override in"),
        FEEDBACK("feedback", "hold the contactor feedback"),
        VOLTS_CODE("volts-code", "set the volts reading"),
        AMPS_CODE("amps-code", "set the amps reading"),
        PRESSURE_CODE("pressure-code", "set the pressure reading"),
        CONVERTER("converter", "stop the converter"),
        METER_HZ("meter-hz", "turn the meter"),
        RESTART("restart", "reset the board");

        private final String word;
        private final String words;

        Cause(String word, String words) {
            this.word = word;
            this.words = words;
        }

        /** What would have to be done, in plain words. */
        public String words() {
            return words;
        }
    }

    /** The command that test boards understand: {@code guard 0}, {@code feedback auto}, {@code restart}. */
    public String command() {
        if (cause == Cause.RESTART) {
            return cause.word;
        }
        return cause.word + " " + (value == AUTO ? "auto" : Integer.toString(value));
    }
}
