package org.pumpwright.host.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.pumpwright.host.trace.Journal;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;
import tools.jackson.databind.json.JsonMapper;

/**
 * The journal of a run that goes on. Its first line is the record as it would be if the program died at once; each line
 * after it is a piece of the trace, about four a second. {@link JournalReader} puts them together again.
 *
 * <p>The disk is written by a thread of its own, because a slow disk must not keep the run from giving its sign of life. While
 * the journal is open, the file is locked. Confined to the run thread.
 */
public final class JournalFile implements Journal, AutoCloseable {
    private static final int SAMPLES_A_LINE = 12;
    /** About once a second. */
    private static final int LINES_A_FORCE = 4;

    private static final long PATIENCE_SECONDS = 5;
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Path file;
    private final Channels channels;
    private final FileChannel channel;
    private final FileLock lock;
    private final ExecutorService disk =
            Executors.newSingleThreadExecutor(task -> new Thread(task, "journal of the run"));
    private final List<Sample> samples = new ArrayList<>();
    private final List<PointMark> points = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();
    private final List<Answer> answers = new ArrayList<>();
    private int linesWritten;
    private volatile boolean failed;

    private JournalFile(Path file, Channels channels, FileChannel channel, FileLock lock) {
        this.file = file;
        this.channels = channels;
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Begins a journal in a new file.
     *
     * @param begun what the record would be if nothing came after it; its trace gives the channels
     * @throws RunRecordException when the file can't be made
     */
    public static JournalFile begin(RunRecord begun, Path file) throws RunRecordException {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            FileChannel channel =
                    FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            JournalFile journal = new JournalFile(file, begun.trace().channels(), channel, channel.lock());
            journal.append(JSON.writeValueAsString(RecordJson.write(begun)));
            return journal;
        } catch (IOException e) {
            throw new RunRecordException(
                    file, "cannot be begun: " + e, "Check that the disk is there, not full and not write-protected", e);
        }
    }

    @Override
    public void sample(Sample sample) {
        samples.add(sample);
        if (samples.size() >= SAMPLES_A_LINE) {
            turnPage();
        }
    }

    @Override
    public void point(PointMark point) {
        points.add(point);
    }

    @Override
    public void stretch(Stretch stretch) {
        stretches.add(stretch);
    }

    @Override
    public void answer(Answer answer) {
        answers.add(answer);
        turnPage();
    }

    /** Whether the disk refused some of it; the run itself goes on without. */
    public boolean failed() {
        return failed;
    }

    /** Writes the rest and lets the file go. */
    @Override
    public void close() {
        if (disk.isShutdown()) {
            return;
        }
        turnPage();
        disk.shutdown();
        try {
            if (!disk.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                failed = true;
            }
            lock.release();
            channel.close();
        } catch (IOException e) {
            failed = true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Lets the file go and removes it: the record itself has been kept. */
    public void discard() {
        close();
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // It stays beside a record that is whole; whoever looks for journals knows that and passes over it.
            failed = true;
        }
    }

    private void turnPage() {
        Trace piece = new Trace(channels, samples, points, stretches, answers);
        samples.clear();
        points.clear();
        stretches.clear();
        answers.clear();
        append(JSON.writeValueAsString(TraceJson.write(piece)));
    }

    private void append(String line) {
        byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
        disk.execute(() -> write(bytes));
    }

    /** On the disk's thread. */
    private void write(byte[] bytes) {
        try {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            linesWritten++;
            if (linesWritten % LINES_A_FORCE == 1) {
                channel.force(false);
            }
        } catch (IOException e) {
            failed = true;
        }
    }
}
