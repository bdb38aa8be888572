package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.Firmware;

/** What a command prints last must be out before the process ends. */
final class LastWordsTest {
    @Test
    void nothingStaysInABuffer() {
        StringWriter seen = new StringWriter();
        PrintWriter out = new PrintWriter(new BufferedWriter(seen, 1_000_000), true);
        PrintWriter err = new PrintWriter(Writer.nullWriter(), true);
        String curve = Firmware.root().resolve("fixtures/curves/demo-pump.yaml").toString();

        int exit = Main.run(new CommandLineBench().workshop(), out, err, "curve", "show", curve);

        assertThat(exit).isEqualTo(ExitCode.PASS);
        assertThat(seen.toString()).contains("motor amps, A").endsWith("\n");
    }
}
