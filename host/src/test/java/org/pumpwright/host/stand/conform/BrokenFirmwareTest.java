package org.pumpwright.host.stand.conform;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pumpwright.host.bench.BoardProcess;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.Line;

/** Firmware with one known defect each: the check that names the defect must find it. */
@Timeout(60)
final class BrokenFirmwareTest {
    private static final String ROLL_OVER = "board time and edge counts roll over without a jump";
    private static final Map<String, String> FOUND_BY = Map.ofEntries(
            Map.entry("answers-foreign-version", "commands of another version are neither obeyed nor answered"),
            Map.entry("arms-with-wrong-boot-id", "arm with another boot id is refused"),
            Map.entry("count-jumps", ROLL_OVER),
            Map.entry("drives-unarmed", "drive and dither are refused unless armed, and move nothing"),
            Map.entry("ignores-guard", "an open guard makes safe, keeps from arming, and arms nothing when it closes"),
            Map.entry("ignores-link-loss", "a lost link makes safe within its time, driving or not"),
            Map.entry("ignores-long-make-safe", "make-safe with a payload is obeyed and then refused"),
            Map.entry("ignores-still-converter", "a converter that stands still locks until a reset"),
            Map.entry(
                    "keeps-drive-through-reset",
                    "a reset while driving leaves it safe, silent, and under a new boot id"),
            Map.entry("keeps-event", "events are told once each, numbered one by one"),
            Map.entry("no-ramp", "a drive follows its set point no faster than the ramp asked for"),
            Map.entry("obeys-bad-crc", "a frame with a bad CRC is neither obeyed nor answered"),
            Map.entry("over-current-ignored", "supply amps above their limit make safe within their time"),
            Map.entry("rearms-by-itself", "once safe it never arms by itself"),
            Map.entry("silent-refusal", "an unknown type is refused with its number"),
            Map.entry("skips-sequence", "every frame of the board counts the sequence on by one"),
            Map.entry("time-does-not-roll", ROLL_OVER),
            Map.entry("widens-limits", "no limit can be widened"));

    static Stream<String> variants() {
        return FOUND_BY.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("variants")
    void theCheckThatNamesTheDefectFindsIt(String variant) throws Exception {
        String name = FOUND_BY.get(variant);
        try (BoardProcess board = BoardProcess.run(Firmware.variant(variant));
                Line line = SerialPorts.open(board.port(), 250_000)) {
            Conformance.Finding finding = Conformance.of(line, new CommandProvoker(board), check -> {}, name::equals);

            assertThat(finding.conforms())
                    .as(() -> finding.checks().get(0).evidence())
                    .isFalse();
            assertThat(finding.broken()).extracting(CheckResult::name).containsExactly(name);
            assertThat(ResultText.verdict(finding))
                    .startsWith("DOES NOT CONFORM.")
                    .endsWith("  - " + name);
        }
    }

    @Test
    void everyVariantOfTheFirmwareIsTried() throws Exception {
        Path patches = Firmware.root().resolve("firmware-protocol/firmware/variants");
        try (Stream<Path> files = Files.list(patches)) {
            List<String> names = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".patch"))
                    .map(name -> name.substring(0, name.length() - ".patch".length()))
                    .toList();

            assertThat(names).containsExactlyInAnyOrderElementsOf(FOUND_BY.keySet());
        }
    }

    @Test
    void everyDefectIsNamedByACheckOfTheScript() {
        assertThat(Conformance.names()).containsAll(FOUND_BY.values()).doesNotHaveDuplicates();
    }
}
