package org.pumpwright.host.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
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
import tools.jackson.databind.json.JsonMapper;

/** Makes a record of the journal that a run left which did not live to its end. Thread-safe. */
public final class JournalReader {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private JournalReader() {}

    /**
     * The record that a journal holds, with everything up to its last whole line. Empty while its run still goes on, and where
     * the program died before the first line was whole.
     *
     * @throws RunRecordException when the file can't be read or is no journal
     */
    public static Optional<RunRecord> read(Path file) throws RunRecordException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null ? Optional.empty() : record(file, wholeLines(file));
        } catch (OverlappingFileLockException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new RunRecordException(file, "cannot be read: " + e, "Check the disk and the rights to the file", e);
        }
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
            throw new RunRecordException(
                    file, "cannot be removed: " + e, "Remove it; its record is kept beside it", e);
        }
    }

    /** The last line was being written when the program died, unless it ends. */
    private static List<String> wholeLines(Path file) throws IOException {
        String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        int end = text.lastIndexOf('\n');
        return end < 0 ? List.of() : text.substring(0, end).lines().toList();
    }

    private static Optional<RunRecord> record(Path file, List<String> lines) throws RunRecordException {
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        try {
            RunRecord begun = RecordJson.read(JsonPlace.root(JSON.readTree(lines.get(0))));
            List<Trace> pieces = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                pieces.add(TraceJson.read(JsonPlace.root(JSON.readTree(line))));
            }
            return Optional.of(begun.withTrace(joined(begun.trace(), pieces)));
        } catch (JacksonException | UnfitRecordException | IllegalArgumentException e) {
            throw new RunRecordException(
                    file, "is no journal of a run: " + e.getMessage(), "Move it away; nothing else needs it", e);
        }
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
