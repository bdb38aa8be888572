package org.pumpwright.host.record.sql;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A small file system in memory. Mounting it needs root.
 *
 * @param folder where it is
 */
public record SmallDisk(Path folder) implements AutoCloseable {
    private static final int BLOCK = 4096;

    public static SmallDisk mount(Path folder, int megabytes) throws Exception {
        Files.createDirectories(folder);
        run("mount", "-t", "tmpfs", "-o", "size=%dm".formatted(megabytes), "tmpfs", folder.toString());
        return new SmallDisk(folder);
    }

    /** Fills it to the last byte; remove the file to make room again. */
    public Path fill() throws IOException {
        Path file = folder.resolve("filling");
        try (OutputStream out = Files.newOutputStream(file)) {
            while (true) {
                out.write(new byte[BLOCK]);
            }
        } catch (IOException full) {
            return file;
        }
    }

    @Override
    public void close() throws Exception {
        run("umount", folder.toString());
    }

    private static void run(String... words) throws Exception {
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new AssertionError("'%s' failed: %s. This test must run as root: sudo ./check"
                    .formatted(String.join(" ", words), said.strip()));
        }
    }
}
