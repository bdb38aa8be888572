package org.pumpwright.host.app;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandIdentity;
import org.pumpwright.host.stand.conform.CheckResult;
import org.pumpwright.host.stand.conform.Conformance;
import org.pumpwright.host.stand.conform.Provoker;
import org.pumpwright.host.stand.conform.SimulatedProvoker;
import org.pumpwright.host.stand.conform.TrialStop;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;

/** Reaches stands: by their description, and by asking every port who is there. Thread-safe. */
public final class Stands {
    private static final Duration PROBE_HELLO = Duration.ofMillis(1500);

    private final WireTiming timing;
    private final SerialOpener opener;

    /** Opens a serial port; {@code SerialPorts::open} but in tests. */
    @FunctionalInterface
    public interface SerialOpener {
        /** Opens the port of this path at this line speed. */
        Line open(String port, int baud) throws StandException;
    }

    /**
     * Reaches stands in one way.
     *
     * @param timing times on the wire
     * @param opener opens serial ports
     */
    public Stands(WireTiming timing, SerialOpener opener) {
        this.timing = timing;
        this.opener = opener;
    }

    /**
     * How a stand is to be reached this time.
     *
     * @param port overrides the port of the description
     * @param unit what hangs on a simulated stand; empty for a healthy unit, and always empty for a real stand
     * @param pace of a simulated stand: virtual seconds in a second; empty for as fast as the machine can
     * @param answers to the plan's questions, by the names of their steps; others get the usual answer
     */
    public record Reach(
            Optional<String> port, Optional<PracticeUnit> unit, OptionalDouble pace, Map<String, String> answers) {}

    /**
     * A port and who answered there.
     *
     * @param port path
     * @param board who answered; empty when nobody did
     * @param trouble why nobody did; empty when somebody did
     */
    public record Found(String port, Optional<StandIdentity> board, String trouble) {}

    /**
     * A stand, not yet opened.
     *
     * @param stand the stand
     * @param person who answers questions at a simulated stand; empty at a real one
     */
    public record Reached(Stand stand, Optional<Operator> person) {}

    /**
     * Makes a stand, not yet opened.
     *
     * @param kind of unit that hangs on a simulated stand where none was chosen
     * @throws OrderException when no port is given and none is found
     */
    public Reached reach(StandDescription description, Reach reach, UnitKind kind) throws OrderException {
        if (description.connection() instanceof Connection.Serial serial) {
            Stand stand = serial(description, port(description, serial, reach), serial.baud(), timing);
            return new Reached(stand, Optional.empty());
        }
        checkNoPort(description, reach);
        Plant plant = plant(reach, kind);
        SimulatedBoard board = new SimulatedBoard(plant, description.channels());
        double pace = reach.pace().orElse(0);
        return new Reached(
                new WireStand(description, () -> new SimulatedLine(board, pace), timing),
                Optional.of(new SimulatedPerson(plant, reach.answers())));
    }

    /**
     * Tries the stand's board against the wire protocol.
     *
     * @param atTheStand who can make things happen to a real board; a simulated one needs nobody
     * @param told hears of each check when it is over
     * @throws OrderException when no port is given and none is found
     * @throws StandException when no board answers, or the line is lost
     */
    public Conformance.Finding conformance(
            StandDescription description, Reach reach, Provoker atTheStand, Consumer<CheckResult> told)
            throws OrderException, StandException {
        return conformance(description, reach, atTheStand, told, new TrialStop());
    }

    /**
     * The same, but it can be stopped from any thread.
     *
     * @throws OrderException when no port is given and none is found
     * @throws StandException when no board answers, the line is lost, or it was stopped
     */
    public Conformance.Finding conformance(
            StandDescription description, Reach reach, Provoker atTheStand, Consumer<CheckResult> told, TrialStop stop)
            throws OrderException, StandException {
        if (description.connection() instanceof Connection.Serial serial) {
            try (Line line = opener.open(port(description, serial, reach), serial.baud())) {
                return Conformance.of(line, atTheStand, told, stop);
            }
        }
        checkNoPort(description, reach);
        SimulatedBoard board = new SimulatedBoard(plant(reach, UnitKind.PUMP_12V), description.channels());
        try (Line line = new SimulatedLine(board, reach.pace().orElse(0))) {
            return Conformance.of(line, new SimulatedProvoker(board), told, stop);
        }
    }

    private String port(StandDescription description, Connection.Serial serial, Reach reach) throws OrderException {
        checkReal(description, reach);
        Optional<String> given = reach.port().or(serial::port);
        return given.isPresent() ? given.get() : onlyPort(description);
    }

    private static Plant plant(Reach reach, UnitKind kind) {
        return reach.unit().orElseGet(() -> PracticeUnit.healthy(kind, 1)).plant();
    }

    private static void checkNoPort(StandDescription description, Reach reach) throws OrderException {
        if (reach.port().isPresent()) {
            throw new OrderException(
                    "stand '%s' is simulated and has no port. Leave --port away, or choose a stand on a serial"
                                    .formatted(description.id())
                            + " port.");
        }
    }

    private static void checkReal(StandDescription description, Reach reach) throws OrderException {
        if (reach.unit().isPresent() || reach.pace().isPresent()) {
            throw new OrderException(
                    "stand '%s' is a real one: --fault, --severity, --seed and --pace are for simulated units. Leave them away."
                            .formatted(description.id()));
        }
    }

    /**
     * Has something done when the process is told to end, while the way to a stand still works. It may be called by more than
     * one thread then. A new action takes the place of the old one.
     */
    public void beforeProcessEnds(Runnable action) {
        SerialPorts.beforePortsClose(action);
    }

    /** Asks the ports of the machine, and others, who is there. Opening a port may reset its board. */
    public List<Found> find(StandDescription description, int baud, List<String> otherPorts) {
        Set<String> ports = new LinkedHashSet<>(otherPorts);
        SerialPorts.listed().forEach(listed -> ports.add(listed.path()));
        List<Found> found = new ArrayList<>();
        for (String port : ports) {
            found.add(ask(description, port, baud));
        }
        return found;
    }

    private Found ask(StandDescription description, String port, int baud) {
        try (Stand stand = serial(description, port, baud, timing.withHello(PROBE_HELLO))) {
            return new Found(port, Optional.of(stand.open()), "");
        } catch (StandException e) {
            return new Found(port, Optional.empty(), e.getMessage());
        }
    }

    private String onlyPort(StandDescription description) throws OrderException {
        List<String> answering = find(description, baud(description), List.of()).stream()
                .filter(found -> found.board().isPresent())
                .map(Found::port)
                .toList();
        if (answering.size() == 1) {
            return answering.get(0);
        }
        String seen = answering.isEmpty()
                ? "no board answered on any port"
                : "several boards answered: " + String.join(", ", answering);
        throw new OrderException(
                "stand '%s' has no port in its file, and %s. Plug the board in, or give its port: --port PATH"
                        .formatted(description.id(), seen));
    }

    private static int baud(StandDescription description) {
        return description.connection() instanceof Connection.Serial serial ? serial.baud() : 0;
    }

    private Stand serial(StandDescription description, String port, int baud, WireTiming timing) {
        return new WireStand(description, () -> opener.open(port, baud), timing);
    }
}
