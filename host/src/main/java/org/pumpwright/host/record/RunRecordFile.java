package org.pumpwright.host.record;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * One run in one JSON file, format {@code pumpwright-run/2}; {@code pumpwright-run/1} is read too. Keys carry their units; samples are columns of integers. The
 * last entry is the SHA-256 of every line above it, so that damage shows, and so that a person can check it without this
 * program: {@code head -n -2 FILE | sha256sum}. Values that a JSON number cannot carry exactly (integers beyond 2^53) or
 * at all (infinity) are strings. Thread-safe.
 */
public final class RunRecordFile {
    /** Name and version of the format. */
    public static final String FORMAT = "pumpwright-run/2";

    /** The format before it, which is still read. */
    static final String FIRST_FORMAT = "pumpwright-run/1";

    static final String READS = FORMAT + " and " + FIRST_FORMAT;

    private static final String FORMAT_NAME = "pumpwright-run/";
    private static final long LARGEST_BYTES = 100_000_000;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private RunRecordFile() {}

    /**
     * Writes a record to a new file, whole or not at all. Folders that are missing are made.
     *
     * @throws RunRecordException when there already is such a file, the disk refuses, or the samples are not all of one
     *     shape; nothing is left behind then
     */
    public static void write(RunRecord record, Path file) throws RunRecordException {
        byte[] bytes;
        try {
            bytes = SealedText.seal(JSON.writer()
                    .with(RecordLayout.PRINTER)
                    .writeValueAsString(RecordJson.write(record).put(SealedText.KEY, SealedText.BLANK)));
        } catch (UnfitRecordException e) {
            throw new RunRecordException(
                    file, "cannot be written: " + e.getMessage(), "Nothing was written; please report this", e);
        }
        try {
            WholeFile.create(file, bytes);
        } catch (FileAlreadyExistsException e) {
            throw alreadyThere(file, e);
        } catch (IOException e) {
            throw new RunRecordException(
                    file,
                    "cannot be written: " + reason(e),
                    "Nothing was written; check that the disk is there, not full and not write-protected",
                    e);
        }
    }

    /**
     * Reads a record back, equal to the one that was written.
     *
     * @throws RunRecordException when there is no such file, it is damaged, or it is of another format
     */
    public static RunRecord read(Path file) throws RunRecordException {
        byte[] bytes = load(file);
        JsonNode root = parse(file, bytes);
        checkFormat(file, root);
        if (!SealedText.intact(bytes)) {
            throw damaged(file, "was changed after it was written (its SHA-256 does not match)", null);
        }
        try {
            return RecordJson.read(JsonPlace.root(root));
        } catch (UnfitRecordException e) {
            throw damaged(file, String.valueOf(e.getMessage()), e);
        } catch (IllegalArgumentException e) {
            throw damaged(file, "holds a value that cannot be: " + e.getMessage(), e);
        }
    }

    private static byte[] load(Path file) throws RunRecordException {
        try {
            long size = Files.size(file);
            if (size > LARGEST_BYTES) {
                throw new RunRecordException(
                        file,
                        "is %d bytes long, a record has at most %d".formatted(size, LARGEST_BYTES),
                        "Give the record of a run");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new RunRecordException(file, "is not there", "Check the name and the folder", e);
        } catch (IOException e) {
            throw new RunRecordException(
                    file, "cannot be read: " + reason(e), "Check the disk and the rights to the file", e);
        }
    }

    private static JsonNode parse(Path file, byte[] bytes) throws RunRecordException {
        try {
            return JSON.readTree(bytes);
        } catch (JacksonException e) {
            TokenStreamLocation at = e.getLocation();
            String line = at == null ? "" : " (line " + at.getLineNr() + ": " + e.getOriginalMessage() + ")";
            throw damaged(file, "is not whole, or is no record at all" + line, e);
        }
    }

    private static void checkFormat(Path file, JsonNode root) throws RunRecordException {
        String format = root.path("format").stringValue("");
        if (isRead(format)) {
            return;
        }
        if (format.startsWith(FORMAT_NAME)) {
            throw new RunRecordException(
                    file,
                    "has format %s, this program reads %s".formatted(format, READS),
                    "Open it with the version of Pumpwright that wrote it, or a newer one");
        }
        throw new RunRecordException(
                file, "is no record of a run (it has no \"format\": \"" + FORMAT + "\")", "Give the record of a run");
    }

    static boolean isRead(String format) {
        return format.equals(FORMAT) || format.equals(FIRST_FORMAT);
    }

    private static RunRecordException damaged(Path file, String problem, @Nullable Throwable cause) {
        String remedy = "Take the copy from the backup; do not mend the file by hand";
        return cause == null
                ? new RunRecordException(file, problem, remedy)
                : new RunRecordException(file, problem, remedy, cause);
    }

    private static RunRecordException alreadyThere(Path file, FileAlreadyExistsException cause) {
        if (file.toString().equals(cause.getFile())) {
            return new RunRecordException(
                    file, "is already there", "Nothing was written: a record is never overwritten", cause);
        }
        return new RunRecordException(
                file,
                "cannot be written: " + cause.getFile() + " is not a folder",
                "Nothing was written; choose another folder",
                cause);
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access denied";
        }
        if (e instanceof FileSystemException disk && disk.getReason() != null) {
            return disk.getReason();
        }
        return String.valueOf(e.getMessage());
    }
}
