package org.pumpwright.host.plant;

/**
 * One step as the stand's sensors report it, their errors included; a reading near zero may therefore be slightly
 * negative. Arrays are handed over, not copied: the receiver owns them. Thread-safe once published, as long as nobody
 * writes to the arrays.
 *
 * @param edgeOffsetsSeconds {@code [meter][i]}: time of each meter edge after the begin of the step, ascending
 * @param voltsAtPins supply voltage at the unit's pins, mean over the drive's whole period (in front of its switch)
 * @param amps mean battery current in the supply lead
 * @param pressurePa mean gauge pressure in front of the nozzle
 * @param waterTemperatureKelvin mean water temperature
 */
@SuppressWarnings("ArrayRecordComponent") // thousands of steps a second: the edges are handed over without a copy
public record PlantReading(
        double[][] edgeOffsetsSeconds,
        double voltsAtPins,
        double amps,
        double pressurePa,
        double waterTemperatureKelvin) {}
