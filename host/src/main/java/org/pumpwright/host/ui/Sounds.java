package org.pumpwright.host.ui;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** Plays cues on a thread of its own, one after the other. A machine without a loudspeaker stays silent. Thread-safe. */
final class Sounds implements AutoCloseable {
    private static final AudioFormat FORMAT = new AudioFormat(ToneWave.RATE_HZ, 16, 1, true, false);
    private static final int WAITING = 3;

    private final ExecutorService player = new ThreadPoolExecutor(
            0,
            1,
            10,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(WAITING),
            Sounds::thread,
            // More cues than can be played soon tell nobody anything: they are left out.
            new ThreadPoolExecutor.DiscardPolicy());

    void play(Cue cue) {
        player.execute(() -> playNow(cue));
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "cues");
        thread.setDaemon(true);
        return thread;
    }

    private static void playNow(Cue cue) {
        byte[] wave = ToneWave.of(cue.tones());
        try (SourceDataLine line = AudioSystem.getSourceDataLine(FORMAT)) {
            line.open(FORMAT);
            line.start();
            line.write(wave, 0, wave.length);
            line.drain();
        } catch (LineUnavailableException | IllegalArgumentException e) {
            // No loudspeaker, or another program has it: the flash of the border says the same.
            return;
        }
    }

    @Override
    public void close() {
        player.shutdownNow();
    }
}
