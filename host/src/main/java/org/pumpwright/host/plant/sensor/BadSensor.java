package org.pumpwright.host.plant.sensor;

/**
 * One broken sensor. Thread-safe.
 *
 * @param channel which
 * @param trouble in which way
 */
public record BadSensor(SensorChannel channel, SensorTrouble trouble) {

    /** Its words, as in {@code pressure-stuck}. */
    public String word() {
        return channel.word() + "-" + trouble.word();
    }
}
