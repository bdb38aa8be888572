package org.pumpwright.host.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.trace.Trace;

/** A run in two parts: what is said of it, and its trace in few bytes. */
final class TraceBlobTest {
    private static final RunRecord FAIL = SampleRecords.fail();

    @Property(seed = "20261125", tries = 300)
    void everyRunComesBackEqual(@ForAll long seed) {
        RunRecord run = DrawnRecords.draw(seed);

        assertThat(RunContent.read(RunContent.of(run), TraceBlob.of(run.trace())))
                .isEqualTo(run);
    }

    @Property(seed = "20261126", tries = 300)
    void theSameRunHasTheSameContentAndTheClaimStandsInIt(@ForAll long seed) {
        RunRecord run = DrawnRecords.draw(seed);

        assertThat(RunContent.of(RunContent.read(RunContent.of(run), run.trace())))
                .isEqualTo(RunContent.of(run));
    }

    @Test
    void theContentHoldsNoTraceAndItsKeysAreInCanonicalOrder() {
        String content = RunContent.of(FAIL);

        assertThat(content).startsWith("{\"conditions\":{\"driver\":").doesNotContain("\"trace\"", "samples\":");
    }

    @Test
    void aTraceWithoutSamplesIsKeptToo() {
        Trace empty = new Trace(FAIL.trace().channels(), List.of(), List.of());

        assertThat(TraceBlob.read(TraceBlob.of(empty))).isEqualTo(empty);
    }

    @Test
    void noByteOfItCanBeChangedUnseen() {
        byte[] blob = TraceBlob.of(FAIL.trace());
        for (int i = 0; i < blob.length; i += 1 + i / 40) {
            byte[] changed = blob.clone();
            changed[i] ^= 1;

            assertThatThrownBy(() -> TraceBlob.read(changed)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aTornOneIsRefusedWithWhatToDo() {
        byte[] blob = TraceBlob.of(FAIL.trace());

        assertThatThrownBy(() -> TraceBlob.read(Arrays.copyOf(blob, blob.length - 1)))
                .hasMessage("the trace is damaged: its checksum does not hold. Take the copy from the backup.");
        assertThatThrownBy(() -> TraceBlob.read(new byte[0])).hasMessageStartingWith("this is no trace");
    }

    @Test
    void aLaterVersionIsNamed() {
        byte[] blob = TraceBlob.of(FAIL.trace());
        blob[7] = '2';

        assertThatThrownBy(() -> TraceBlob.read(blob))
                .hasMessageStartingWith("the trace is of version 2, this program reads version 1.");
    }

    @Test
    void oneThatSaysItIsHugeIsRefusedBeforeItIsUnpacked() {
        byte[] blob = TraceBlob.of(FAIL.trace());
        blob[8] = 0x7f;

        assertThatThrownBy(() -> TraceBlob.read(blob)).hasMessageContaining("0 to 200000000 can be");
    }

    @Test
    void anotherFormatOfTheContentIsRefused() {
        String other = RunContent.of(FAIL).replace(RunRecordFile.FORMAT, "pumpwright-run/99");

        assertThatThrownBy(() -> RunContent.read(other, FAIL.trace()))
                .hasMessageContaining("it has format pumpwright-run/99");
    }
}
