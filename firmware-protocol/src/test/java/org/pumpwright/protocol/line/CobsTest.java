package org.pumpwright.protocol.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published vectors name their source in the file's last column. */
class CobsTest {
    static List<Row> published() throws IOException {
        return Row.of("cobs-published.csv");
    }

    static List<Row> rejects() throws IOException {
        return Row.of("cobs-rejects.csv");
    }

    /** Two hexadecimal columns or one, and words. */
    record Row(String first, String second, String source) {
        static List<Row> of(String file) throws IOException {
            Path path = Path.of(System.getProperty("pumpwright.root"), "fixtures", "frames", file);
            return Files.readAllLines(path).stream()
                    .skip(1)
                    .filter(line -> !line.isBlank())
                    .map(line -> line.split(",", 3))
                    .map(columns -> new Row(columns[0], columns[1], columns[2]))
                    .toList();
        }

        static byte[] bytes(String hex) {
            return HexFormat.of().parseHex(hex.replace(" ", ""));
        }
    }

    @Test
    void thePublishedFilesAreThereAndNameTheirSources() throws IOException {
        assertThat(published()).hasSizeGreaterThanOrEqualTo(10).allMatch(row -> !row.source.isBlank());
        assertThat(rejects()).hasSizeGreaterThanOrEqualTo(3).allMatch(row -> !row.source.isBlank());
    }

    @ParameterizedTest
    @MethodSource("published")
    void aPublishedVectorEncodes(Row row) {
        assertThat(Cobs.encode(Row.bytes(row.first))).isEqualTo(Row.bytes(row.second));
    }

    @ParameterizedTest
    @MethodSource("published")
    void aPublishedVectorDecodes(Row row) {
        assertThat(decode(Row.bytes(row.second))).isEqualTo(Row.bytes(row.first));
    }

    @ParameterizedTest
    @MethodSource("rejects")
    void aPublishedWrongEncodingIsRejected(Row row) {
        byte[] encoded = Row.bytes(row.first);
        assertThat(Cobs.decode(encoded, 0, encoded.length, new byte[encoded.length], 0))
                .isEqualTo(Cobs.NOT_COBS);
    }

    @Test
    void noByteAtAllIsNoEncoding() {
        assertThat(Cobs.decode(new byte[0], 0, 0, new byte[0], 0)).isEqualTo(Cobs.NOT_COBS);
        assertThat(Cobs.encode(new byte[0])).containsExactly(1);
    }

    @Property(seed = "5063", tries = 1000)
    void whatWasEncodedDecodesToTheSame(@ForAll("mixed") byte[] plain) {
        assertThat(decode(Cobs.encode(plain))).isEqualTo(plain);
    }

    @Property(seed = "5064", tries = 1000)
    void anEncodingHasNoZeroAndAtMostOneByteMorePer254(@ForAll("mixed") byte[] plain) {
        byte[] encoded = Cobs.encode(plain);
        assertThat(encoded).doesNotContain((byte) 0).hasSizeGreaterThan(plain.length);
        assertThat(encoded.length).isLessThanOrEqualTo(Cobs.maxEncodedLength(plain.length));
    }

    @Property(seed = "5065", tries = 1000)
    void decodingInPlaceGivesTheSame(@ForAll("mixed") byte[] plain) {
        byte[] bytes = Cobs.encode(plain);
        int length = Cobs.decode(bytes, 0, bytes.length, bytes, 0);
        assertThat(Arrays.copyOf(bytes, length)).isEqualTo(plain);
    }

    @Property(seed = "5066", tries = 1000)
    void anyBytesDecodeToFewerBytesOrAreRejected(@ForAll("mixed") byte[] encoded) {
        int length = Cobs.decode(encoded, 0, encoded.length, new byte[encoded.length], 0);
        assertThat(length).isBetween(Cobs.NOT_COBS, Math.max(0, encoded.length - 1));
    }

    @Property(seed = "5067", tries = 300)
    void onlyTheGivenPartIsReadAndWritten(
            @ForAll("mixed") byte[] plain,
            @ForAll @IntRange(max = 7) int before,
            @ForAll @IntRange(max = 7) int after) {
        byte[] source = new byte[before + plain.length + after];
        System.arraycopy(plain, 0, source, before, plain.length);
        byte[] target = new byte[before + Cobs.maxEncodedLength(plain.length) + after];
        int length = Cobs.encode(source, before, plain.length, target, before);
        assertThat(Arrays.copyOfRange(target, before, before + length)).isEqualTo(Cobs.encode(plain));
        assertThat(Arrays.copyOf(target, before)).isEqualTo(new byte[before]);
        assertThat(Arrays.copyOfRange(target, before + length, target.length))
                .isEqualTo(new byte[target.length - before - length]);
    }

    @Test
    void aTargetThatMightBeTooSmallIsRefusedBeforeAnythingIsWritten() {
        byte[] target = new byte[3];
        assertThatExceptionOfType(IndexOutOfBoundsException.class)
                .isThrownBy(() -> Cobs.encode(new byte[] {7, 7, 7}, 0, 3, target, 0));
        assertThat(target).containsOnly(0);
    }

    @Provide
    Arbitrary<byte[]> mixed() {
        Arbitrary<Byte> often = Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.of((byte) 0, (byte) 1, (byte) 2, (byte) 0xFF)),
                Tuple.of(9, Arbitraries.bytes()));
        return Arbitraries.oneOf(often, Arbitraries.bytes().between((byte) 1, (byte) 127))
                .array(byte[].class)
                .ofMaxSize(800);
    }

    private static byte[] decode(byte[] encoded) {
        byte[] plain = new byte[encoded.length];
        int length = Cobs.decode(encoded, 0, encoded.length, plain, 0);
        assertThat(length).isNotEqualTo(Cobs.NOT_COBS);
        return Arrays.copyOf(plain, length);
    }
}
