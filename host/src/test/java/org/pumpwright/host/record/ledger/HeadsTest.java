package org.pumpwright.host.record.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeadsTest {
    @TempDir
    private Path folder;

    @Test
    void whatIsWrittenDownIsReadAgain() throws Exception {
        Heads heads = new Heads(List.of(
                new Heads.Line("stand 1", new RecordStore.Head(12, Digest.of(new byte[] {1}))),
                new Heads.Line("desk", new RecordStore.Head(7, Digest.of(new byte[] {2})))));
        Path file = Files.writeString(folder.resolve("heads"), "# Friday\n\n" + heads.text());
        assertThat(Heads.read(file)).isEqualTo(heads);
        assertThat(heads.of("desk")).containsExactly(new RecordStore.Head(7, Digest.of(new byte[] {2})));
    }

    @Test
    void aLineThatIsNoneIsNamed() throws Exception {
        Path file = Files.writeString(folder.resolve("heads"), "# Friday\n12 stand-1\n");
        assertThatThrownBy(() -> Heads.read(file))
                .isInstanceOf(IOException.class)
                .hasMessage(file + ", line 2: '12 stand-1' is not: number, digest, chain");
    }
}
