package org.pumpwright.host.bench;

import java.nio.file.Files;
import java.nio.file.Path;

/** The built firmware and the programs that run it. */
public final class Firmware {
    private Firmware() {}

    public static Path avr328() {
        return built("firmware/build/avr328.elf");
    }

    public static Path emulator() {
        return built("emulator/build/stand-emulator");
    }

    public static Path pcBoard() {
        return built("firmware/build/stand-pc");
    }

    /** The board of the PC with one known defect. */
    public static Path variant(String name) {
        return built("firmware/build/variants/" + name + "/stand-pc");
    }

    /** A missing build fails the test; it never skips it. */
    private static Path built(String path) {
        Path file = root().resolve("firmware-protocol").resolve(path);
        if (!Files.exists(file)) {
            throw new AssertionError(file + " is not built. Run ./check, or: make -C firmware-protocol");
        }
        return file;
    }

    public static Path root() {
        return Path.of(System.getProperty("pumpwright.root"));
    }
}
