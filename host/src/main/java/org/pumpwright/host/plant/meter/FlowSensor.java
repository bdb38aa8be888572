package org.pumpwright.host.plant.meter;

import org.pumpwright.host.plant.MeterParameters;

/** How a meter makes pulses of flow. Thread-safe. */
public sealed interface FlowSensor {

    /** A turning rotor: {@code f = K_inf (Q - b)} above its start flow, else silent. */
    record Rotor(MeterParameters parameters) implements FlowSensor {}

    /** No moving part: {@code f = K (Q + q_0)} with noise and damping, cut off below a flow, pulses in bursts. */
    record Electromagnetic(EmParameters parameters) implements FlowSensor {}
}
