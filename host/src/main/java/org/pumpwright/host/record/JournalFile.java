package org.pumpwright.host.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Journal;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;
import tools.jackson.databind.json.JsonMapper;

/**
 * The journal of a run that goes on. Its first line is the record as it would be if the program died at once; each line
 * after it is a piece of the trace, about four a second. {@link JournalReader} puts them together again.
 *
 * <p>The file bears its name only once it is locked and its first line is on the disk, so whoever finds one unlocked may take
 * it. The lines are written by a thread of its own, because a slow disk must not keep the run from giving its sign of life; and
 * another forces them to the disk, because a slow card must not keep lines in a program that may be killed.
 *
 * <p>After a piece that could not be written nothing more is: what is there has no hole. Confined to the run thread.
 */
public final class JournalFile implements Journal, AutoCloseable {
    private static final int SAMPLES_A_LINE = 12;
    /** About once a second. */
    private static final int LINES_A_FORCE = 4;

    /** Some minutes of a disk that does not answer. */
    private static final int MOST_LINES_WAITING = 1000;

    private static final long PATIENCE_SECONDS = 5;
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** Journals that this very program has open. Where a second look at a file is closed, the system may drop every lock on it. */
    private static final Set<Path> OPEN = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final Path place;
    private final Channels channels;
    private final FileChannel channel;
    private final ThreadPoolExecutor disk;
    private final List<Sample> samples = new ArrayList<>();
    private final List<PointMark> points = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();
    private final List<Answer> answers = new ArrayList<>();
    private final ExecutorService forcing =
            Executors.newSingleThreadExecutor(task -> daemon(task, "journal to the disk"));
    private final AtomicBoolean forcePending = new AtomicBoolean();
    private int linesWritten;
    private volatile boolean failed;

    private JournalFile(Path file, Path place, Channels channels, FileChannel channel) {
        this.file = file;
        this.place = place;
        this.channels = channels;
        this.channel = channel;
        disk = new ThreadPoolExecutor(
                1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(MOST_LINES_WAITING), JournalFile::diskThread);
    }

    private static Thread diskThread(Runnable task) {
        return daemon(task, "journal of the run");
    }

    /** A disk that hangs must not keep a program that wants to end. */
    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Begins a journal in a new file, whose first line is on the disk then.
     *
     * @param begun what the record would be if nothing came after it; its trace gives the channels
     * @throws RunRecordException when the file can't be made or is there already
     */
    public static JournalFile begin(RunRecord begun, Path file) throws RunRecordException {
        try {
            Path folder = Files.createDirectories(folder(file));
            Path part = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
            try {
                return begin(begun, part, file);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException | UnfitRecordException e) {
            throw new RunRecordException(
                    file, "cannot be begun: " + e, "Check that the disk is there, not full and not write-protected", e);
        }
    }

    private static JournalFile begin(RunRecord begun, Path part, Path file) throws IOException {
        FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        Path place = place(file);
        try {
            if (channel.tryLock() == null) {
                throw new IOException("the file was locked by another program at once");
            }
            writeLine(channel, JSON.writeValueAsString(RecordJson.write(begun)));
            channel.force(true);
            if (!OPEN.add(place)) {
                throw new FileAlreadyExistsException(file.toString());
            }
            Files.move(part, file);
        } catch (IOException | RuntimeException e) {
            OPEN.remove(place);
            channel.close();
            throw e;
        }
        Path folder = folder(file);
        WholeFile.forceFolder(folder);
        WholeFile.forceFolder(folder.resolve(".."));
        return new JournalFile(file, place, begun.trace().channels(), channel);
    }

    /** Whether this program itself has this journal open. */
    static boolean isOpenHere(Path file) throws IOException {
        return OPEN.contains(place(file));
    }

    /** One name for a file, however its folder is reached. */
    private static Path place(Path file) throws IOException {
        return folder(file).toRealPath().resolve(file.getFileName());
    }

    private static Path folder(Path file) throws NoSuchFileException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new NoSuchFileException(file.toString(), null, "it lies in no folder");
        }
        return folder;
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

    /** Whether some of it could not be written; the run itself goes on without. */
    public boolean failed() {
        return failed;
    }

    /** Writes the rest and lets the file go. A disk that does not answer is left to itself after a while. */
    @Override
    public void close() {
        if (disk.isShutdown()) {
            return;
        }
        turnPage();
        onDisk(this::letGo);
        disk.shutdown();
        try {
            if (!disk.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                failed = true;
            }
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
            // It stays beside a record that is whole; whoever looks for journals knows that and removes it.
            failed = true;
        }
    }

    private void turnPage() {
        Trace piece = new Trace(channels, samples, points, stretches, answers);
        samples.clear();
        points.clear();
        stretches.clear();
        answers.clear();
        try {
            String line = JSON.writeValueAsString(TraceJson.write(piece));
            onDisk(() -> write(line));
        } catch (UnfitRecordException e) {
            // Samples of different shapes: the record will not take them either, and the run is not the journal's to
            // end.
            failed = true;
        }
    }

    private void onDisk(Runnable task) {
        try {
            disk.execute(task);
        } catch (RejectedExecutionException e) {
            // The disk has not answered for minutes, or the journal is closed.
            failed = true;
        }
    }

    /** On the disk's thread. */
    private void write(String line) {
        if (failed) {
            return;
        }
        try {
            writeLine(channel, line);
            linesWritten++;
            if (linesWritten % LINES_A_FORCE == 0 && !forcePending.getAndSet(true)) {
                forcing.execute(this::force);
            }
        } catch (IOException e) {
            failed = true;
        }
    }

    private void force() {
        try {
            forcePending.set(false);
            channel.force(false);
        } catch (ClosedChannelException e) {
            // The run is over and its record kept, or the system takes what is left to the disk in its own time.
            return;
        } catch (IOException e) {
            failed = true;
        }
    }

    private static void writeLine(FileChannel channel, String line) throws IOException {
        ByteBuffer left = ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8));
        while (left.hasRemaining()) {
            channel.write(left);
        }
    }

    /** On the disk's thread, its last task. Closing drops the lock. */
    private void letGo() {
        forcing.shutdown();
        try {
            channel.close();
        } catch (IOException e) {
            failed = true;
        } finally {
            OPEN.remove(place);
        }
    }
}
