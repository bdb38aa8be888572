package org.pumpwright.host.catalog;

import java.util.OptionalDouble;

/**
 * What a unit's model says that it should do; each is empty where the model says nothing. Thread-safe.
 *
 * @param pulsesPerM3 K of a meter, pulses per m3
 * @param outputHertz switching frequency of a driver's output
 * @param ratedAmps current of the pump that a harness feeds
 */
public record Nominal(OptionalDouble pulsesPerM3, OptionalDouble outputHertz, OptionalDouble ratedAmps) {
    /** A model that says nothing. */
    public static final Nominal UNKNOWN =
            new Nominal(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
