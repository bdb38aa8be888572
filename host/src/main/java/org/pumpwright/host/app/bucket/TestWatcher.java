package org.pumpwright.host.app.bucket;

import org.pumpwright.host.calibrate.Run;
import org.pumpwright.host.quantity.Duty;

/** Hears how a guided bucket test goes. Called on the run thread; must return soon, because the run waits for it. */
public interface TestWatcher {
    /** What is being done, or what the person is to do. */
    void says(String words);

    /**
     * About once a second while the bucket fills.
     *
     * @param seconds since the diverter was swung in
     * @param pulses since then
     * @param m3 by the meter's K until now
     */
    void live(double seconds, double pulses, double m3);

    /** A run begins: its number from 1, and the duty of its flow. */
    default void began(int run, Duty duty) {}

    /** The scale on its line was read. */
    default void scaleShows(double grams) {}

    /** The scale on its line could not be read, and why; a weight is asked for again. */
    default void scaleFails(String why) {}

    /** A run was weighed, and is in the sheet. */
    default void kept(Run run) {}
}
