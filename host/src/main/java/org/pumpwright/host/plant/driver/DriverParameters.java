package org.pumpwright.host.plant.driver;

import org.pumpwright.host.plant.Range;

/**
 * A driver module: everything the model needs except randomness. Assumed values. Thread-safe.
 *
 * @param output the switch
 * @param logic what it makes of the command
 * @param limitAmps mean current it does not exceed
 * @param foldbackShare what is left of the limit once hot
 * @param foldbackSeconds time at the limit after which that happens
 * @param quiescentAmps its own current, output off
 * @param senseOffsetAmps error of the current it reports
 * @param openingsPerMinute how often a crack opens its output; more often as the case warms
 * @param kelvinPerWatt case over air per watt in the switch
 * @param warmingSeconds time constant of that
 */
public record DriverParameters(
        OutputStage output,
        DriverLogic logic,
        double limitAmps,
        double foldbackShare,
        double foldbackSeconds,
        double quiescentAmps,
        double senseOffsetAmps,
        double openingsPerMinute,
        double kelvinPerWatt,
        double warmingSeconds) {

    public DriverParameters {
        Range.check("current limit", limitAmps, 0.01, 1000, "A");
        Range.check("foldback", foldbackShare, 0.01, 1, "");
        Range.check("foldback time", foldbackSeconds, 0, 1e6, "s");
        Range.check("quiescent current", quiescentAmps, 0, 100, "A");
        Range.check("current-sense offset", senseOffsetAmps, -100, 100, "A");
        Range.check("openings", openingsPerMinute, 0, 1000, "per min");
        Range.check("case thermal resistance", kelvinPerWatt, 0, 1000, "K/W");
        Range.check("case warming time", warmingSeconds, 1, 1e5, "s");
    }

    /** A module in good order; assumed starting values, not any maker's. */
    public static DriverParameters healthy() {
        return new DriverParameters(OutputStage.healthy(), DriverLogic.healthy(), 22, 1, 120, 0.040, 0, 0, 6, 8 * 60);
    }

    /** The same with another output stage. */
    public DriverParameters withOutput(OutputStage other) {
        return new DriverParameters(
                other,
                logic,
                limitAmps,
                foldbackShare,
                foldbackSeconds,
                quiescentAmps,
                senseOffsetAmps,
                openingsPerMinute,
                kelvinPerWatt,
                warmingSeconds);
    }

    /** The same with other logic. */
    public DriverParameters withLogic(DriverLogic other) {
        return new DriverParameters(
                output,
                other,
                limitAmps,
                foldbackShare,
                foldbackSeconds,
                quiescentAmps,
                senseOffsetAmps,
                openingsPerMinute,
                kelvinPerWatt,
                warmingSeconds);
    }

    DriverParameters withLimit(double amps, double share) {
        return new DriverParameters(
                output,
                logic,
                amps,
                share,
                foldbackSeconds,
                quiescentAmps,
                senseOffsetAmps,
                openingsPerMinute,
                kelvinPerWatt,
                warmingSeconds);
    }

    DriverParameters withQuiescent(double amps) {
        return new DriverParameters(
                output,
                logic,
                limitAmps,
                foldbackShare,
                foldbackSeconds,
                amps,
                senseOffsetAmps,
                openingsPerMinute,
                kelvinPerWatt,
                warmingSeconds);
    }

    DriverParameters withSenseOffset(double amps) {
        return new DriverParameters(
                output,
                logic,
                limitAmps,
                foldbackShare,
                foldbackSeconds,
                quiescentAmps,
                amps,
                openingsPerMinute,
                kelvinPerWatt,
                warmingSeconds);
    }

    DriverParameters withOpenings(double perMinute) {
        return new DriverParameters(
                output,
                logic,
                limitAmps,
                foldbackShare,
                foldbackSeconds,
                quiescentAmps,
                senseOffsetAmps,
                perMinute,
                kelvinPerWatt,
                warmingSeconds);
    }
}
