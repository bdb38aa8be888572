package org.pumpwright.host.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.Inputs;

/**
 * The real microcontroller program in the emulator, with a simulated unit on its pins: the emulator tells what the pins
 * give and is told what the unit answers, in lockstep. The plant is stepped on the reader thread.
 */
public final class EmulatedBoard extends BoardProcess {
    private static final int EXCHANGE_MICROS = 5000;
    private static final double REFERENCE_MILLIVOLTS = 5000;
    private static final double FULL = 65_536;
    private static final int ALL_CLOSED = new Inputs(true, true, true, true, false).bits();

    private final Plant plant;
    private final Channels channels;
    private final Queue<String> commands = new ConcurrentLinkedQueue<>();
    private final Lockstep step = new Lockstep();
    private final List<Pins> history = new ArrayList<>();
    private volatile int inputs = ALL_CLOSED;

    /** What the pins gave at a moment of the board's own time. */
    public record Pins(long micros, int duty, boolean contactorClosed) {}

    private EmulatedBoard(Plant plant, Channels channels, List<String> command) {
        super(command);
        this.plant = plant;
        this.channels = channels;
    }

    /**
     * @param speed seconds of the board in a second of the wall
     */
    public static EmulatedBoard start(Plant plant, Channels channels, double speed) {
        EmulatedBoard board = new EmulatedBoard(
                plant,
                channels,
                List.of(
                        Firmware.emulator().toString(),
                        "--elf",
                        Firmware.avr328().toString(),
                        "--speed",
                        String.format(Locale.ROOT, "%.3f", speed),
                        "--exchange-us",
                        Integer.toString(EXCHANGE_MICROS)));
        board.listen();
        return board;
    }

    /**
     * A board that runs as fast as it can, but never far ahead of the host: it waits while the host is not scheduled, so
     * that a busy machine can't make a healthy link look lost. Only for hosts that use {@link #line}.
     */
    public static EmulatedBoard inLockstep(Plant plant, Channels channels) {
        return start(plant, channels, 0);
    }

    /** A serial line to this board on which the host's waiting is counted in the board's time. */
    public Line line(String port, int baud) throws StandException {
        return new LockstepLine(SerialPorts.open(port, baud), step);
    }

    /** A command of the emulator, e.g. {@code reset} or {@code unplug}; see its README. */
    public void command(String command) {
        commands.add(command);
    }

    public void setInputs(boolean emergencyStop, boolean guard) {
        setInputs(new Inputs(emergencyStop, guard, true, true, false));
    }

    /** The contactor's feedback is not taken from here: it follows the contactor, or the command {@code feedback}. */
    public void setInputs(Inputs closed) {
        inputs = closed.withContactorFeedback(false).bits();
    }

    /** What the pins gave so far, every 5 ms. */
    public List<Pins> history() {
        synchronized (history) {
            return List.copyOf(history);
        }
    }

    @Override
    protected void line(String line) throws IOException {
        if (!line.startsWith("pins ")) {
            super.line(line);
            return;
        }
        String[] words = line.split(" ");
        Pins pins = new Pins(Long.parseLong(words[1]), Integer.parseInt(words[2]), words[4].equals("1"));
        synchronized (history) {
            history.add(pins);
        }
        step.boardReached(pins.micros(), Long.parseLong(words[5]));
        for (String command = commands.poll(); command != null; command = commands.poll()) {
            toBoard.write(command + "\n");
        }
        PlantReading reading =
                plant.step(EXCHANGE_MICROS / 1e6, new double[] {pins.duty() / FULL}, pins.contactorClosed());
        toBoard.write(answer(reading));
        toBoard.flush();
    }

    private String answer(PlantReading reading) {
        StringBuilder in = new StringBuilder("in");
        int[] millivolts = new int[4];
        for (AnalogChannel channel : channels.analogs()) {
            double si = switch (channel.role()) {
                case VOLTS_AT_PINS -> reading.voltsAtPins();
                case SUPPLY_AMPS -> reading.amps();
                case OUTLET_PRESSURE -> reading.pressurePa();
                case WATER_TEMPERATURE -> reading.waterTemperatureKelvin();
            };
            millivolts[channel.index()] = (int) Math.round(channel.code(si) / FULL * REFERENCE_MILLIVOLTS);
        }
        for (int value : millivolts) {
            in.append(' ').append(value);
        }
        in.append(' ').append(inputs);
        double[] edges = reading.edgeOffsetsSeconds()[0];
        in.append(' ').append(edges.length);
        for (double offset : edges) {
            in.append(String.format(Locale.ROOT, " %.1f", offset * 1e6));
        }
        return in.append(" 0\n").toString();
    }
}
