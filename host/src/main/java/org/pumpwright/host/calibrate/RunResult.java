package org.pumpwright.host.calibrate;

import java.util.Optional;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Volume;

/**
 * One run worked out, with each step between. Thread-safe.
 *
 * @param run as read
 * @param weighed the steps of a weighed run; empty otherwise
 * @param volume that passed the meter
 * @param correctedPulses the count without what was counted in excess
 * @param flow mean over the run
 * @param k pulses per volume
 */
public record RunResult(
        Run run, Optional<Weighed> weighed, Volume volume, double correctedPulses, FlowRate flow, KFactor k) {
    /**
     * From what the scale showed to a mass.
     *
     * @param netKg gross less tare
     * @param airKgPerM3 density of the air
     * @param liquidKgPerM3 density of the liquid at its temperature
     * @param buoyancy mass over net
     * @param massKg net times buoyancy
     */
    public record Weighed(double netKg, double airKgPerM3, double liquidKgPerM3, double buoyancy, double massKg) {}
}
