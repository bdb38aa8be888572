package org.pumpwright.host.ui;

import java.util.List;
import java.util.Locale;

/** A cue to ear and eye: short tones, and a flash of the window's border with a word. Thread-safe. */
public enum Cue {
    /** A point has settled and is being measured. */
    SETTLED,
    /** A step of the plan is done. */
    STEP,
    /** The verdict is there. */
    VERDICT,
    /** Something needs somebody now. */
    ALARM;

    /**
     * One tone.
     *
     * @param hertz its pitch
     * @param millis how long
     */
    public record Tone(double hertz, int millis) {}

    /** Its tones, one after the other. */
    public List<Tone> tones() {
        return switch (this) {
            case SETTLED -> List.of(new Tone(660, 70));
            case STEP -> List.of(new Tone(660, 80), new Tone(880, 110));
            case VERDICT -> List.of(new Tone(523, 110), new Tone(659, 110), new Tone(784, 220));
            case ALARM -> List.of(new Tone(988, 160), new Tone(740, 160), new Tone(988, 160), new Tone(740, 260));
        };
    }

    /** Its name in texts and styles. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
