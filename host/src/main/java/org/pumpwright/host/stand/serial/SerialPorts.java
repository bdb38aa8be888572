package org.pumpwright.host.stand.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.wire.Line;

/** The machine's serial ports: which there are, and how one is opened. Thread-safe. */
public final class SerialPorts {
    private static final int DATA_BITS = 8;
    private static final int READ_WAIT_MILLIS = 100;
    private static final int NO_SUCH_FILE = 2;
    private static final int TRY_AGAIN = 11;
    private static final int NO_PERMISSION = 13;
    private static final int BUSY = 16;

    private static volatile Runnable beforePortsClose = () -> {};
    private static final AtomicBoolean HOOKED = new AtomicBoolean();

    private SerialPorts() {}

    /**
     * Has something done when the process is told to end, before the serial library closes the ports under whoever uses
     * them. One action at a time: a new one takes the place of the old one.
     */
    public static void beforePortsClose(Runnable action) {
        beforePortsClose = action;
    }

    /** The library has a hook of its own, and runs only what was given to it before it closes the ports. */
    private static void hookOnce() {
        if (HOOKED.compareAndSet(false, true)) {
            SerialPort.addShutdownHook(new Thread(() -> beforePortsClose.run(), "before the serial ports close"));
        }
    }

    /**
     * A port that the system lists.
     *
     * @param path how it is opened
     * @param description what the system says of it
     */
    public record Listed(String path, String description) {}

    /** The ports that the system lists; pseudo-terminals are not among them. Not to be called more than every 2 s. */
    public static List<Listed> listed() {
        SerialNative.prepare();
        return Arrays.stream(SerialPort.getCommPorts())
                .map(port -> new Listed(port.getSystemPortPath(), port.getDescriptivePortName()))
                .toList();
    }

    /**
     * Opens a port by the path as it was given: after a re-plug the same path may lead to another device.
     *
     * @param path path or name of the port
     * @param baud line speed
     * @throws StandException {@code NO_PORT}, {@code PORT_BUSY}, {@code NO_RIGHTS} or {@code PORT_FAULT}
     */
    public static Line open(String path, int baud) throws StandException {
        return open(path, baud, (bytes, nanoTime) -> {});
    }

    /**
     * Opens a port as {@link #open(String, int)} does, and tells when what is sent has been handed to the system.
     *
     * @param path path or name of the port
     * @param baud line speed
     * @param written told of each piece on the line's writer thread, which it must not hold up
     * @throws StandException {@code NO_PORT}, {@code PORT_BUSY}, {@code NO_RIGHTS} or {@code PORT_FAULT}
     */
    public static Line open(String path, int baud, FrameWritten written) throws StandException {
        SerialNative.prepare();
        hookOnce();
        SerialPort port = find(path);
        port.setComPortParameters(baud, DATA_BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
        port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, READ_WAIT_MILLIS, 0);
        if (!port.openPort(0)) {
            throw refused(path, port.getLastErrorCode());
        }
        return new SerialLine(path, port, written);
    }

    private static SerialPort find(String path) throws StandException {
        if (Files.isRegularFile(Path.of(path))) {
            throw new StandException(
                    Trouble.PORT_FAULT,
                    path,
                    "%s is a file, not a serial port. 'pumpwright stand find' lists the ports.".formatted(path));
        }
        try {
            return SerialPort.getCommPort(path);
        } catch (SerialPortInvalidPortException e) {
            throw noPort(path);
        }
    }

    private static StandException refused(String path, int errorCode) {
        boolean exists = Files.exists(Path.of(path));
        if (errorCode == NO_PERMISSION) {
            return new StandException(
                    Trouble.NO_RIGHTS,
                    path,
                    ("%s: this user may not open the port. Add the user to the port's group and log in again:"
                                    + " sudo usermod -aG %s %s")
                            .formatted(path, group(path), System.getProperty("user.name", "USER")));
        }
        // Within one program a second opening fails with "no such file" although the port is there.
        if (errorCode == TRY_AGAIN || errorCode == BUSY || (errorCode == NO_SUCH_FILE && exists)) {
            return new StandException(
                    Trouble.PORT_BUSY,
                    path,
                    ("%s is in use by another program. Close that program (a second Pumpwright, a terminal, a firmware"
                                    + " loader) and try again.")
                            .formatted(path));
        }
        if (!exists) {
            return noPort(path);
        }
        return new StandException(
                Trouble.PORT_FAULT,
                path,
                "%s can't be opened as a serial port (system error %d). Unplug and replug it, or try another port."
                        .formatted(path, errorCode));
    }

    private static StandException noPort(String path) {
        return new StandException(
                Trouble.NO_PORT,
                path,
                ("there is no port %s. Is the board plugged in? 'pumpwright stand find' lists the ports and the boards"
                                + " that answer.")
                        .formatted(path));
    }

    private static String group(String path) {
        try {
            Object owner = Files.getAttribute(Path.of(path), "posix:group");
            return owner.toString();
        } catch (java.io.IOException | UnsupportedOperationException e) {
            return "dialout";
        }
    }
}
