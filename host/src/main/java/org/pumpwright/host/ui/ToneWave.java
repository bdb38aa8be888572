package org.pumpwright.host.ui;

import java.util.List;

/** Tones as sound: 16-bit mono samples, low byte first. Each tone swells and fades for 8 ms so that it does not click. Thread-safe. */
final class ToneWave {
    /** Samples a second. */
    static final int RATE_HZ = 22_050;

    private static final double LOUDNESS = 0.45 * Short.MAX_VALUE;
    private static final double FADE_SECONDS = 0.008;

    private ToneWave() {}

    static byte[] of(List<Cue.Tone> tones) {
        int total = tones.stream().mapToInt(ToneWave::samples).sum();
        byte[] wave = new byte[2 * total];
        int at = 0;
        for (Cue.Tone tone : tones) {
            int samples = samples(tone);
            for (int i = 0; i < samples; i++) {
                int value = (int) Math.round(LOUDNESS * swell(i, samples) * sine(tone.hertz(), i));
                wave[at++] = (byte) value;
                wave[at++] = (byte) (value >> 8);
            }
        }
        return wave;
    }

    private static int samples(Cue.Tone tone) {
        return tone.millis() * RATE_HZ / 1000;
    }

    private static double sine(double hertz, int sample) {
        return Math.sin(2 * Math.PI * hertz * sample / RATE_HZ);
    }

    private static double swell(int sample, int samples) {
        double fade = FADE_SECONDS * RATE_HZ;
        return Math.min(1, Math.min(sample, samples - 1 - sample) / fade);
    }
}
