package org.pumpwright.host.stand.serial;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Map;

/**
 * Puts the serial library's native part into a folder that only this user can write, before the library loads. On its own
 * it would unpack into a shared temporary folder that everybody can write. Thread-safe.
 */
final class SerialNative {
    private static final String PATH_PROPERTY = "jSerialComm.library.path";
    private static final String FILE = "libjSerialComm.so";
    private static final Map<String, String> FOLDERS =
            Map.of("amd64", "x86_64", "x86_64", "x86_64", "aarch64", "armv8_64", "arm", "armv7hf");

    private static boolean done;

    private SerialNative() {}

    /** Prepares once; on systems other than Linux the library's own way is left. */
    static synchronized void prepare() {
        if (done || System.getProperty(PATH_PROPERTY) != null) {
            return;
        }
        done = true;
        String folder = FOLDERS.get(System.getProperty("os.arch", ""));
        boolean linux =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
        if (!linux || folder == null) {
            return;
        }
        try (InputStream library = com.fazecast
                .jSerialComm
                .SerialPort
                .class
                .getClassLoader()
                .getResourceAsStream("Linux/" + folder + "/" + FILE)) {
            if (library != null) {
                System.setProperty(PATH_PROPERTY, unpack(library).toString());
            }
        } catch (IOException e) {
            // Without a home to write to the library unpacks for itself, as it does everywhere else.
            System.clearProperty(PATH_PROPERTY);
        }
    }

    private static Path unpack(InputStream library) throws IOException {
        Path folder = Path.of(System.getProperty("user.home", "."), ".cache", "pumpwright", "native");
        Files.createDirectories(folder);
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        // A whole file replaces the old one, so a second program that starts meanwhile never loads half of it.
        Path part = Files.createTempFile(folder, FILE, ".part");
        Files.copy(library, part, StandardCopyOption.REPLACE_EXISTING);
        Files.move(part, folder.resolve(FILE), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        return folder;
    }
}
