package org.pumpwright.host.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.calibration.Certificate.Standing;

final class CertificateTest {
    private static final LocalDate MADE = LocalDate.of(2026, 1, 10);
    private static final LocalDate DUE = LocalDate.of(2027, 1, 10);
    private final Certificate dated = new Certificate("P-77", Optional.of(MADE), Optional.of(DUE));

    @Test
    void theDueDayItselfIsStillInDate() {
        assertThat(dated.standing(DUE)).isEqualTo(Standing.IN_DATE);
        assertThat(dated.standing(DUE.plusDays(1))).isEqualTo(Standing.PAST_DUE);
    }

    @Test
    void eachStandingHasItsWords() {
        assertThat(dated.words(DUE)).isEqualTo("certificate P-77 of 2026-01-10, due 2027-01-10");
        assertThat(dated.words(DUE.plusDays(1))).isEqualTo("PAST DUE since 2027-01-10 (certificate P-77)");
        assertThat(new Certificate("P-78", Optional.of(MADE), Optional.empty()).words(DUE))
                .isEqualTo("certificate P-78 of 2026-01-10, no due date");
        assertThat(Certificate.undated("none: simulated").words(DUE)).isEqualTo("not calibrated (none: simulated)");
    }

    @Test
    void daysThatContradictEachOtherAreRefused() {
        assertThatThrownBy(() -> new Certificate("P-77", Optional.empty(), Optional.of(DUE)))
                .hasMessage("certificate P-77 is due on 2027-01-10 but has no day of calibration");
        assertThatThrownBy(() -> new Certificate("P-77", Optional.of(DUE), Optional.of(MADE)))
                .hasMessage("certificate P-77 is due on 2026-01-10, before its calibration on 2027-01-10");
    }
}
