package org.pumpwright.host.plant;

/** What is on the stand's hoses and wires: duty in, pulses and physical readings out. Confined to one thread. */
public interface Plant {

    /**
     * Advances by {@code seconds} with the duties held.
     *
     * @param seconds how far to advance, above 0
     * @param duties one duty 0..1 per drive channel
     * @param contactorClosed whether the supply contactor feeds the unit
     * @return the meter edges and the mean sensor readings of this step
     * @throws IllegalArgumentException when seconds or a duty is out of range
     */
    PlantReading step(double seconds, double[] duties, boolean contactorClosed);

    /**
     * Does what a person at the stand would do by hand, such as closing a valve.
     *
     * @param setting its name, in small letters with dashes
     * @param value its new value, in the setting's own unit
     * @throws IllegalArgumentException when this plant has no such setting, or the value is out of range
     */
    default void adjust(String setting, double value) {
        throw new IllegalArgumentException("this simulated unit has no setting '%s'".formatted(setting));
    }
}
