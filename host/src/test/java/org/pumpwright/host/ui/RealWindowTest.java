package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;

/** The window as it is opened at a bench: a process of its own, a window system, real keys and a real mouse. */
@Timeout(600)
final class RealWindowTest {
    private static final int SECONDS = 480;
    private static final Path PICTURES = Path.of("target", "pictures").toAbsolutePath();

    @TempDir
    Path folder;

    @Test
    void twoJobsGoByRealKeysAndARealMouse() throws Exception {
        Path tools = Files.createDirectories(folder.resolve("tools"));
        Path shown = folder.resolve("shown");
        Path log = folder.resolve("window.log");
        putOpener(tools, shown);
        try (VirtualDisplay display = VirtualDisplay.start(folder)) {
            Process window = window(display, tools, log);
            try {
                assertThat(window.waitFor(SECONDS, TimeUnit.SECONDS))
                        .as(Files.readString(log))
                        .isTrue();
                assertThat(window.exitValue()).as(Files.readString(log)).isZero();
            } finally {
                window.destroyForcibly();
            }
        }
        List<RunRecord> runs = JourneyTest.kept(folder.resolve("records"));
        assertThat(runs).extracting(run -> run.subject().serial()).containsExactly("SN-1", "SN-2");
        assertThat(runs).extracting(run -> run.grade().verdict()).containsExactly(Verdict.PASS, Verdict.INVALID);
        assertThat(runs.get(1).ending().reason())
                .isEqualTo("STOP was pressed in the window: something leaked or sprayed");
        assertThat(Path.of(Files.readString(shown).strip())).exists();
    }

    private Process window(VirtualDisplay display, Path tools, Path log) throws Exception {
        ProcessBuilder starting = new ProcessBuilder(RealWindowProgram.command(folder, PICTURES))
                .redirectErrorStream(true)
                .redirectOutput(log.toFile());
        starting.environment().put("DISPLAY", display.name());
        starting.environment().put("HOME", folder.toString());
        starting.environment().merge("PATH", tools.toString(), (path, first) -> first + File.pathSeparator + path);
        return starting.start();
    }

    /** In the place of the desktop's own program that shows papers: writes down which. */
    private static void putOpener(Path tools, Path shown) throws Exception {
        Path opener = tools.resolve("xdg-open");
        Files.writeString(opener, "#!/bin/sh\necho \"$1\" > '%s'\n".formatted(shown));
        Files.setPosixFilePermissions(opener, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
}
