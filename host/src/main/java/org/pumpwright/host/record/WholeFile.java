package org.pumpwright.host.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** A new file that is there whole or not at all, whatever happens to power or program meanwhile. Thread-safe. */
final class WholeFile {
    private WholeFile() {}

    /**
     * Writes a part file beside the target, forces it to the disk, and gives it the target's name.
     *
     * @throws FileAlreadyExistsException when the target is there, or one of its folders is a file
     * @throws IOException when the disk refuses
     */
    static void create(Path target, byte[] bytes) throws IOException {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || Files.exists(target)) {
            throw new FileAlreadyExistsException(target.toString());
        }
        Files.createDirectories(folder);
        Path part = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            writeToDisk(part, bytes);
            rename(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
        forceFolder(folder);
    }

    private static void writeToDisk(Path part, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** A hard link never replaces a file, an atomic move does; where the disk has no links a plain move must do. */
    private static void rename(Path part, Path target) throws IOException {
        try {
            Files.createLink(target, part);
        } catch (FileAlreadyExistsException e) {
            throw new FileAlreadyExistsException(target.toString());
        } catch (UnsupportedOperationException | FileSystemException e) {
            Files.move(part, target);
        }
    }

    /** Makes the new name itself safe from a power cut. Not every system can open a folder; there the disk decides. */
    static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // The file itself is on the disk; only its name may come later.
            return;
        }
    }
}
