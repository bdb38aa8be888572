package org.pumpwright.host.record;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A program of its own that tells by its exit code whether a file is locked. */
final class LockProbe {
    static final int FREE = 10;
    static final int LOCKED = 11;

    private LockProbe() {}

    public static void main(String[] arguments) throws IOException {
        int code;
        try (FileChannel channel =
                        FileChannel.open(Path.of(arguments[0]), StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            code = lock == null ? LOCKED : FREE;
        }
        System.exit(code);
    }
}
