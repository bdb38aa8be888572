package org.pumpwright.host.ui.work;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Opens papers with the program that the desktop has for them. Thread-safe. */
public final class DesktopOpener implements Opener {
    private final List<String> command;

    /** For the machine that this runs on. */
    public DesktopOpener() {
        this(System.getProperty("os.name", ""));
    }

    /** For an operating system by its name. */
    DesktopOpener(String system) {
        String small = system.toLowerCase(Locale.ROOT);
        if (small.contains("windows")) {
            command = List.of("rundll32", "url.dll,FileProtocolHandler");
        } else {
            command = List.of(small.contains("mac") ? "open" : "xdg-open");
        }
    }

    /** What is started, without the paper. */
    List<String> command() {
        return command;
    }

    @Override
    public void open(Path paper) throws IOException {
        ProcessBuilder program = new ProcessBuilder(new ArrayList<>(command));
        program.command().add(paper.toAbsolutePath().toString());
        program.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        program.start();
    }
}
