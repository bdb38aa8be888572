package org.pumpwright.host.ui.work;

import java.util.Locale;

/** Where a guided bucket test is: what the person does, or waits for. Thread-safe. */
public enum BucketStep {
    /** Nothing has begun: the plan is being made. */
    PLAN,
    STARTING,
    TARE,
    /** The scale is coming to rest and being read. */
    SCALE,
    STEADYING,
    SWING_IN,
    COUNTING,
    SWING_OUT,
    GROSS,
    /** Its K is being worked out and kept. */
    WORKING_OUT,
    /** K is there. */
    RESULT;

    /** Whether a weight is wanted. */
    public boolean weighs() {
        return this == TARE || this == GROSS;
    }

    /** Whether the person is to swing the diverter. */
    public boolean swings() {
        return this == SWING_IN || this == SWING_OUT;
    }

    /** Whether the stand is at work, or waits for the person. */
    public boolean underWay() {
        return this != PLAN && this != RESULT;
    }

    /** Where it is once this was answered, until the next thing is asked. */
    BucketStep afterwards() {
        return switch (this) {
            case TARE -> STEADYING;
            case SWING_IN -> COUNTING;
            default -> STARTING;
        };
    }

    /** What the person is to do, in a sentence. */
    Word sentence() {
        return Word.of("ui.bucket.step." + name().toLowerCase(Locale.ROOT));
    }

    static BucketStep ofQuestion(String name) {
        return switch (name) {
            case "tare" -> TARE;
            case "gross" -> GROSS;
            case "swing-in" -> SWING_IN;
            default -> SWING_OUT;
        };
    }
}
