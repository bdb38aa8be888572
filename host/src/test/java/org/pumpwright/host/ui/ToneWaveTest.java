package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class ToneWaveTest {
    @ParameterizedTest
    @EnumSource(Cue.class)
    void everyCueIsShortAndLoudEnough(Cue cue) {
        byte[] wave = ToneWave.of(cue.tones());

        assertThat(wave.length / 2.0 / ToneWave.RATE_HZ).isBetween(0.05, 1.0);
        assertThat(loudest(wave)).isBetween(10_000, 20_000);
    }

    @ParameterizedTest
    @EnumSource(Cue.class)
    void everyToneHasItsPitch(Cue cue) {
        for (Cue.Tone tone : cue.tones()) {
            byte[] wave = ToneWave.of(List.of(tone));
            double seconds = wave.length / 2.0 / ToneWave.RATE_HZ;
            assertThat(risings(wave) / seconds).isBetween(tone.hertz() - 1.1 / seconds, tone.hertz() + 1.1 / seconds);
        }
    }

    private static int loudest(byte[] wave) {
        int loudest = 0;
        for (int i = 0; i < wave.length / 2; i++) {
            loudest = Math.max(loudest, Math.abs(sample(wave, i)));
        }
        return loudest;
    }

    private static int risings(byte[] wave) {
        int risings = 0;
        for (int i = 1; i < wave.length / 2; i++) {
            risings += sample(wave, i - 1) < 0 && sample(wave, i) >= 0 ? 1 : 0;
        }
        return risings;
    }

    private static int sample(byte[] wave, int index) {
        return (short) ((wave[2 * index] & 0xFF) | wave[2 * index + 1] << 8);
    }
}
