package org.pumpwright.host.app.bucket;

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
}
