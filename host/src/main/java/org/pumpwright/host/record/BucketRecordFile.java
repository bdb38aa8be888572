package org.pumpwright.host.record;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * One bucket test in one JSON file, format {@code pumpwright-bucket/1}, sealed as the record of a run is: the last entry is the
 * SHA-256 of every line above it. It is written once and never edited. Thread-safe.
 */
public final class BucketRecordFile {
    /** Name and version of the format. */
    public static final String FORMAT = "pumpwright-bucket/1";

    private static final String FORMAT_NAME = "pumpwright-bucket/";
    private static final long LARGEST_BYTES = 10_000_000;
    private static final String REMEDY = "Take the copy from the backup; do not mend the file by hand";
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private BucketRecordFile() {}

    /**
     * Writes a record to a new file, whole or not at all. Folders that are missing are made.
     *
     * @throws RunRecordException when there already is such a file, or the disk refuses; nothing is left behind then
     */
    public static void write(BucketRecord record, Path file) throws RunRecordException {
        byte[] bytes = bytes(record);
        try {
            WholeFile.create(file, bytes);
        } catch (FileAlreadyExistsException e) {
            throw new RunRecordException(
                    file, "is already there", "Nothing was written: a record is never overwritten", e);
        } catch (IOException e) {
            throw new RunRecordException(
                    file,
                    "cannot be written: " + e.getMessage(),
                    "Nothing was written; check that the disk is there, not full and not write-protected",
                    e);
        }
    }

    /** The bytes of its file. */
    public static byte[] bytes(BucketRecord record) {
        return SealedText.seal(JSON.writer()
                .with(RecordLayout.PRINTER)
                .writeValueAsString(BucketRecordJson.write(record).put(SealedText.KEY, SealedText.BLANK)));
    }

    /**
     * Reads a record back, equal to the one that was written.
     *
     * @throws RunRecordException when there is no such file, it is damaged, or it is of another format
     */
    public static BucketRecord read(Path file) throws RunRecordException {
        return read(file, load(file));
    }

    /**
     * The same from bytes that are at hand.
     *
     * @param file what they are called in complaints
     * @throws RunRecordException when they are damaged, or of another format
     */
    public static BucketRecord read(Path file, byte[] bytes) throws RunRecordException {
        JsonNode root = parse(file, bytes);
        String format = root.path("format").stringValue("");
        if (!format.equals(FORMAT)) {
            throw new RunRecordException(
                    file,
                    format.startsWith(FORMAT_NAME)
                            ? "has format %s, this program reads %s".formatted(format, FORMAT)
                            : "is no record of a bucket test (it has no \"format\": \"" + FORMAT + "\")",
                    "Give a record that this version of the program has written");
        }
        if (!SealedText.intact(bytes)) {
            throw new RunRecordException(file, "was changed after it was written (its SHA-256 does not match)", REMEDY);
        }
        try {
            return BucketRecordJson.read(JsonPlace.root(root));
        } catch (UnfitRecordException | IllegalArgumentException | DateTimeException e) {
            throw new RunRecordException(file, String.valueOf(e.getMessage()), REMEDY, e);
        }
    }

    private static byte[] load(Path file) throws RunRecordException {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new RunRecordException(
                        file,
                        "is longer than %d bytes, a record has at most that".formatted(LARGEST_BYTES),
                        "Give the record of a bucket test");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new RunRecordException(file, "is not there", "Check the name and the folder", e);
        } catch (IOException e) {
            throw new RunRecordException(
                    file, "cannot be read: " + e.getMessage(), "Check the disk and the rights to the file", e);
        }
    }

    private static JsonNode parse(Path file, byte[] bytes) throws RunRecordException {
        try {
            return JSON.readTree(bytes);
        } catch (JacksonException e) {
            throw new RunRecordException(file, "is not whole, or is no record at all", REMEDY, e);
        }
    }
}
