package org.pumpwright.host.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Makes a record of the journal that a run left which did not live to its end. Thread-safe. */
public final class JournalReader {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private JournalReader() {}

    /**
     * The record that a journal holds, with everything up to its last whole line. Empty while its run still goes on, and when
     * somebody else has just removed it.
     *
     * @throws RunRecordException when the file can't be read or is no journal
     */
    public static Optional<RunRecord> read(Path file) throws RunRecordException {
        try {
            if (JournalFile.isOpenHere(file)) {
                return Optional.empty();
            }
        } catch (IOException e) {
            throw unreadable(file, e);
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            // Read by the same channel: another one would drop the lock when it is closed, or not get past it.
            return lock == null
                    ? Optional.empty()
                    : Optional.of(record(file, Channels.newInputStream(channel).readAllBytes()));
        } catch (OverlappingFileLockException | NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    private static RunRecordException unreadable(Path file, IOException e) {
        return new RunRecordException(file, "cannot be read: " + e, "Check the disk and the rights to the file", e);
    }

    /**
     * The journals in a folder of runs, oldest first.
     *
     * @param name of the journal's file, in the folder of its run
     * @throws RunRecordException when the folder can't be read
     */
    public static List<Path> find(Path folder, String name) throws RunRecordException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> runs = Files.list(folder)) {
            return runs.map(run -> run.resolve(name))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            throw new RunRecordException(
                    folder, "cannot be read: " + e, "Check the disk and the rights to the folder", e);
        }
    }

    /**
     * Removes a journal whose record has been kept.
     *
     * @throws RunRecordException when the disk refuses
     */
    public static void remove(Path file) throws RunRecordException {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new RunRecordException(file, "cannot be removed: " + e, "Remove it; its record is kept beside it", e);
        }
    }

    private static RunRecord record(Path file, byte[] bytes) throws RunRecordException {
        List<String> lines = wholeLines(bytes);
        if (lines.isEmpty()) {
            throw new RunRecordException(file, "is a journal in which nothing stands", "Remove it; no run is in it");
        }
        RunRecord begun = begun(file, lines.get(0));
        return begun.withTrace(joined(begun.trace(), pieces(lines.subList(1, lines.size()))));
    }

    /** The last line was being written when the program died, unless it ends. */
    private static List<String> wholeLines(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        int end = text.lastIndexOf('\n');
        return end < 0 ? List.of() : text.substring(0, end).lines().toList();
    }

    private static RunRecord begun(Path file, String line) throws RunRecordException {
        try {
            JsonNode root = JSON.readTree(line);
            String format = root.path("format").stringValue("");
            if (!format.isEmpty() && !RunRecordFile.isRead(format)) {
                throw new RunRecordException(
                        file,
                        "has format %s, this program reads %s".formatted(format, RunRecordFile.READS),
                        "Start the version of Pumpwright that wrote it once; it will keep the run");
            }
            return RecordJson.read(JsonPlace.root(root));
        } catch (JacksonException | UnfitRecordException | IllegalArgumentException e) {
            throw new RunRecordException(
                    file, "is no journal of a run: " + e.getMessage(), "Move it away; nothing else needs it", e);
        }
    }

    /** A power cut may leave a line that cannot be read. What comes after it would have a hole before it, and is left out. */
    private static List<Trace> pieces(List<String> lines) {
        List<Trace> pieces = new ArrayList<>();
        try {
            for (String line : lines) {
                pieces.add(TraceJson.read(JsonPlace.root(JSON.readTree(line))));
            }
        } catch (JacksonException | UnfitRecordException | IllegalArgumentException e) {
            return pieces;
        }
        return pieces;
    }

    private static Trace joined(Trace begun, List<Trace> pieces) {
        List<Sample> samples = new ArrayList<>();
        List<PointMark> points = new ArrayList<>();
        List<Stretch> stretches = new ArrayList<>();
        List<Answer> answers = new ArrayList<>();
        for (Trace piece : pieces) {
            samples.addAll(piece.samples());
            points.addAll(piece.points());
            stretches.addAll(piece.stretches());
            answers.addAll(piece.answers());
        }
        return new Trace(begun.channels(), samples, points, stretches, answers);
    }
}
