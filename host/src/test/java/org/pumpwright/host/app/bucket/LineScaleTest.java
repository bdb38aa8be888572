package org.pumpwright.host.app.bucket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.stand.wire.Line;

/** A scale that says its reading as text. */
final class LineScaleTest {
    @TempDir
    private Path folder;

    /** Says its pieces one by one, then the last for ever; a tenth of a second passes for each. */
    private static final class SpokenLine implements Line {
        private final Deque<byte[]> pieces = new ArrayDeque<>();
        private long nanos;
        private boolean listening;

        SpokenLine(List<String> said) {
            said.forEach(piece -> pieces.add(piece.getBytes(StandardCharsets.US_ASCII)));
        }

        @Override
        public String name() {
            return "scale line";
        }

        @Override
        public void send(byte[] bytes) {
            throw new UnsupportedOperationException("nothing is sent to a scale");
        }

        @Override
        public int receive(byte[] into, Duration atMost) {
            if (atMost.isZero()) {
                return 0;
            }
            nanos += Duration.ofMillis(100).toNanos();
            if (!listening) {
                listening = true;
                return 0;
            }
            byte[] piece = pieces.size() > 1 ? pieces.removeFirst() : pieces.getFirst();
            System.arraycopy(piece, 0, into, 0, piece.length);
            return piece.length;
        }

        @Override
        public long nanoTime() {
            return nanos;
        }

        @Override
        public void close() {}
    }

    @Test
    void threeSteadyReadingsThatAgreeMakeAWeight() throws Exception {
        LineScale scale = scale(
                "US,GS,  15100.0 g\r\nST,GS,",
                "  15110.0 g\r\n",
                "ST,GS,  15112.0 g\r\n",
                "noise\r\nST,GS,  15112.0 g\r\n");
        assertThat(scale.steadyKilograms()).isCloseTo(15.112, within(1e-9));
    }

    @Test
    void aScaleThatNeverRestsIsTold() {
        LineScale scale = scale("US,GS,  15100.0 g\r\n");
        assertThatThrownBy(scale::steadyKilograms)
                .hasMessage(
                        "scale line: no 3 steady readings that agree within 20 s. Let it stand still, out of the wind.");
    }

    @Test
    void whatThePatternDoesNotDescribeIsShown() {
        LineScale scale = scale("WEIGHT=15.1\r\n");
        assertThatThrownBy(scale::steadyKilograms)
                .hasMessageContaining("it said 'WEIGHT=15.1', which the pattern does not describe");
    }

    @Test
    void aPatternWithoutItsPartsIsRefusedWithItsLine() throws Exception {
        Path file = Files.writeString(
                folder.resolve("scale.yaml"),
                "scale: x\nbaud: 9600\nline_ending: lf\npattern: \"([0-9.]+)\"\nunits: { g: gram }\n");
        assertThatThrownBy(() -> ScaleSettings.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessageContaining("scale.yaml:4")
                .hasMessageContaining("needs the groups (?<value>...) and (?<unit>...)");
    }

    private static LineScale scale(String... said) {
        try {
            return new LineScale(
                    new SpokenLine(List.of(said)),
                    ScaleSettings.read(Firmware.root().resolve("fixtures/buckets/scale-example.yaml")));
        } catch (DataFileException e) {
            throw new AssertionError(e);
        }
    }
}
