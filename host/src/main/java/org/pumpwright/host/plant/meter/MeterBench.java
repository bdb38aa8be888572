package org.pumpwright.host.plant.meter;

/**
 * A returned meter and the loop it hangs in. Thread-safe.
 *
 * @param unit the returned meter
 * @param loop the stand's loop
 */
public record MeterBench(ReturnedMeter unit, MeterLoop loop) {

    /** A healthy small rotor meter on the small loop. */
    public static MeterBench small() {
        return new MeterBench(ReturnedMeter.small(), MeterLoop.small());
    }

    /** A healthy large rotor meter on the large loop. */
    public static MeterBench large() {
        return new MeterBench(ReturnedMeter.large(), MeterLoop.large());
    }

    /** The same with another meter. */
    public MeterBench withUnit(ReturnedMeter other) {
        return new MeterBench(other, loop);
    }

    /** The same meter in another loop. */
    public MeterBench withLoop(MeterLoop other) {
        return new MeterBench(unit, other);
    }
}
