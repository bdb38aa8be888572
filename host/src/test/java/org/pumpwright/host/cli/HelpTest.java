package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The help of every command. */
final class HelpTest {
    private final CommandLine program = PumpwrightCommand.tree(new CommandLineBench().workshop());
    private int commands;

    /** The library formats every sentence, and complains of a percent sign that is not doubled. */
    @Test
    void everySentenceOfTheHelpCanBePrintedWithoutAComplaint() {
        PrintStream before = System.err;
        ByteArrayOutputStream complaints = new ByteArrayOutputStream();
        System.setErr(new PrintStream(complaints, true, StandardCharsets.UTF_8));
        try {
            print(program);
        } finally {
            System.setErr(before);
        }

        assertThat(commands).isGreaterThan(8);
        assertThat(complaints.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    private void print(CommandLine command) {
        commands++;
        assertThat(command.getUsageMessage()).contains("Usage: ").doesNotContain("%%");
        command.getSubcommands().values().forEach(this::print);
    }
}
