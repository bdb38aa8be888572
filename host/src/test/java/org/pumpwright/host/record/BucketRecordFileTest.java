package org.pumpwright.host.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.report.bucket.BucketSamples;

final class BucketRecordFileTest {
    @TempDir
    private Path folder;

    @Test
    void aRecordReadsBackEqual() throws Exception {
        Path file = folder.resolve("a/bucket.json");
        BucketRecordFile.write(BucketSamples.hostile(), file);

        assertThat(BucketRecordFile.read(file)).isEqualTo(BucketSamples.hostile());
    }

    @Test
    void aRecordIsNeverOverwritten() throws Exception {
        Path file = folder.resolve("bucket.json");
        BucketRecordFile.write(BucketSamples.plain(), file);

        assertThatThrownBy(() -> BucketRecordFile.write(BucketSamples.hostile(), file))
                .isInstanceOf(RunRecordException.class)
                .hasMessage(file + ": is already there. Nothing was written: a record is never overwritten.");
        assertThat(BucketRecordFile.read(file)).isEqualTo(BucketSamples.plain());
    }

    @Test
    void whoEditsARecordIsFoundOut() throws Exception {
        Path file = folder.resolve("bucket.json");
        BucketRecordFile.write(BucketSamples.plain(), file);
        Files.writeString(file, Files.readString(file).replace("M-0001", "M-0002"));

        assertThatThrownBy(() -> BucketRecordFile.read(file))
                .hasMessage(
                        file + ": was changed after it was written (its SHA-256 does not match). Take the copy from the"
                                + " backup; do not mend the file by hand.");
    }

    @Test
    void otherFilesAreRefused() throws Exception {
        Path file = Files.writeString(folder.resolve("x.json"), "{\"format\": \"pumpwright-bucket/9\"}");
        assertThatThrownBy(() -> BucketRecordFile.read(file))
                .hasMessageContaining("has format pumpwright-bucket/9, this program reads pumpwright-bucket/1");
        Files.writeString(file, "{");
        assertThatThrownBy(() -> BucketRecordFile.read(file))
                .hasMessageContaining("is not whole, or is no record at all");
    }
}
