package org.pumpwright.host.app.bucket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.calibrate.BucketEvaluation;
import org.pumpwright.host.calibrate.BucketRefused;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.UnitSystem;

final class SheetTest {
    private static final Path EXAMPLE = Firmware.root().resolve("fixtures/buckets/weighed-example.yaml");

    private Sheet sheet;

    @BeforeEach
    void read() throws DataFileException {
        sheet = SheetFile.read(EXAMPLE, UnitSystem.US);
    }

    /** A bench file may be older than the test: on a stand the day of the test counts, for the report and for the certificates. */
    @Test
    void onAnotherDayTheReportAndTheCertificatesFollow() throws BucketRefused {
        LocalDate last = LocalDate.of(2027, 1, 12);
        Sheet then = sheet.performedOn(last);

        assertThat(then.job().performed()).isEqualTo(last);
        assertThat(then.job().technician()).isEqualTo(sheet.job().technician());
        assertThat(then.test().runs()).isEqualTo(sheet.test().runs());
        BucketEvaluation.requireUsable(then.test());
        assertThatThrownBy(() -> BucketEvaluation.requireUsable(
                        sheet.performedOn(last.plusDays(1)).test()))
                .isInstanceOf(BucketRefused.class);
    }

    @Test
    void everyComplaintHasItsLine() {
        assertThat(sheet.place("run 1 flow")).isEqualTo("weighed-example.yaml:54");
        assertThat(sheet.place("scale.certificate")).isEqualTo("weighed-example.yaml:33");
        assertThat(sheet.place("liquid.density")).isEqualTo("weighed-example.yaml:31");
        assertThat(sheet.place("flows")).isEqualTo("weighed-example.yaml:49");
        assertThat(sheet.place("bench")).isEqualTo("weighed-example.yaml");
    }
}
