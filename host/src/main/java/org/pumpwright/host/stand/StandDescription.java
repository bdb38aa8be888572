package org.pumpwright.host.stand;

import java.util.Optional;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.trace.Channels;

/**
 * A stand as its builder describes it: how it is reached, what its channels mean, and what hangs on it. Thread-safe.
 *
 * @param id short name, as given on the command line
 * @param title for people
 * @param connection how it is reached
 * @param channels meters and analogue channels with their calibrations
 * @param driver id of the driver between board and unit
 * @param nozzle the nozzle that loads the unit
 * @param largeLoopNozzle the nozzle behind meter 1, where that is in a loop of its own
 * @param fluid id of the fluid in the tank
 * @param supplyVolts open-circuit voltage that the stand's supply should have, V
 * @param reliefCheck proof that the stand's relief valve opens in time; empty where there is none
 */
public record StandDescription(
        String id,
        String title,
        Connection connection,
        Channels channels,
        String driver,
        Nozzle nozzle,
        Optional<Nozzle> largeLoopNozzle,
        String fluid,
        double supplyVolts,
        Optional<Certificate> reliefCheck) {

    /**
     * What loads a unit.
     *
     * @param id short name
     * @param m3PerSecondPerRootPascal its flow over the root of the pressure before it, with the stand's fluid
     */
    public record Nozzle(String id, double m3PerSecondPerRootPascal) {}

    /** The nozzle of the loop that this meter is in, by the meter's number on the board. */
    public Nozzle nozzleBehind(int meter) {
        return meter == 1 ? largeLoopNozzle.orElse(nozzle) : nozzle;
    }

    /** How the board is reached. */
    public sealed interface Connection permits Connection.Serial, Connection.Simulated {
        /**
         * A microcontroller on a serial port.
         *
         * @param port path or name of the port; empty when it is to be given or found
         * @param baud line speed
         * @param uniqueId the board expected there; empty when any will do
         */
        record Serial(Optional<String> port, int baud, Optional<String> uniqueId) implements Connection {}

        /** No hardware: a board and a unit in the program itself. */
        record Simulated() implements Connection {}
    }
}
