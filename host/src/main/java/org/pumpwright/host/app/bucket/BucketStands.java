package org.pumpwright.host.app.bucket;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;

/** Reaches the stand of a guided bucket test; at a simulated one a simulated person weighs and swings. Thread-safe. */
final class BucketStands {
    private static final long STAND_SEED = 1;

    private final Stands stands;

    BucketStands(Stands stands) {
        this.stands = stands;
    }

    /**
     * A stand, not yet opened.
     *
     * @param stand the stand
     * @param person at a simulated stand; empty at a real one
     */
    record Reached(Stand stand, Optional<Operator> person) {}

    Reached reach(StandDescription description, Optional<String> port, long unit, int meter) throws OrderException {
        if (description.connection() instanceof Connection.Serial) {
            Stands.Reach reach = new Stands.Reach(port, Optional.empty(), OptionalDouble.empty(), Map.of());
            return new Reached(
                    stands.reach(description, reach, UnitKind.PUMP_12V).stand(), Optional.empty());
        }
        if (port.isPresent() || meter != 0) {
            throw new OrderException(
                    "stand '%s' is simulated: it has no port, and its bucket is behind meter 0. Leave --port and --meter away."
                            .formatted(description.id()));
        }
        SimulatedBench bench = bench(unit);
        return new Reached(simulated(description, bench, 0), Optional.of(new SimulatedWeigher(bench)));
    }

    /** The same, but at a simulated stand this person does the work. */
    Reached reachByHand(StandDescription description, Optional<String> port, Operator person, double pace)
            throws OrderException {
        if (description.connection() instanceof Connection.Serial) {
            return reach(description, port, 1, 0);
        }
        SimulatedBench bench = bench(1);
        return new Reached(simulated(description, bench, pace), Optional.of(new PractisingWeigher(bench, person)));
    }

    private static SimulatedBench bench(long unit) {
        PumpParameters pump = new PumpPopulation(unit).unit(0);
        return new SimulatedBench(new PumpPlant(pump, SensorErrors.drawn(STAND_SEED), unit), pump.meter(), 0);
    }

    private static Stand simulated(StandDescription description, SimulatedBench bench, double pace) {
        SimulatedBoard board = new SimulatedBoard(bench, description.channels());
        return new WireStand(description, () -> new SimulatedLine(board, pace), WireTiming.STANDARD);
    }
}
