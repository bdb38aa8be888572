package org.pumpwright.host.plant;

/**
 * Supply current and pressure sampled fast, as the stand's sensors give them. Arrays are handed over, not copied: the
 * receiver owns them. Thread-safe once published, as long as nobody writes to the arrays.
 *
 * @param samplesPerSecond rate of both series
 * @param amps current in the supply lead, averaged over the drive's period
 * @param pressurePa gauge pressure in front of the nozzle
 */
@SuppressWarnings("ArrayRecordComponent") // handed over without a copy
public record RippleSeries(double samplesPerSecond, double[] amps, double[] pressurePa) {}
