package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.conform.CheckResult;
import org.pumpwright.host.stand.conform.Conformance;
import org.pumpwright.host.stand.conform.Outcome;
import org.pumpwright.host.stand.conform.Provocation;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.WindowTest;

/** What the screen of the stand says of checks and calibrations, without a window. */
final class StandWordsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    private final Saying spanish = new Saying(Language.ES, UnitSystem.METRIC);

    @Test
    void everyDemandOnABoardHasASpanishName() {
        assertThat(Conformance.names()).hasSizeGreaterThan(50).allSatisfy(name -> {
            Row row = CareRows.row(new CheckResult(name, "4.1", Outcome.HELD, ""));
            assertThat(spanish.now(row.name())).doesNotContain(name).endsWith("(protocolo 4.1)");
        });
    }

    @Test
    void whatNobodyIsThereToDoIsToldInSpanish() {
        assertThat(Provocation.Cause.values()).allSatisfy(cause -> {
            String english = "nobody is here who can do it: " + cause.words();
            Row row = CareRows.row(new CheckResult("no limit can be widened", "4.11", Outcome.NOT_POSSIBLE, english));
            assertThat(spanish.now(row.finding()))
                    .startsWith("no hay aquí quien lo haga: ")
                    .doesNotContain(cause.words());
        });
    }

    @Test
    void whatIsDueFirstComesFirstWithItsDaysAndWhatToDo() throws Exception {
        List<Row> rows = rows(
                Certificate.undated("none: not calibrated"),
                certificate(TODAY.plusYears(1)),
                certificate(TODAY.plusDays(9)),
                certificate(TODAY.minusDays(3)));
        assertThat(rows).extracting(Row::mark).containsExactly(Mark.BAD, Mark.WATCH, Mark.WATCH, Mark.GOOD);
        assertThat(spanish.now(rows.get(0).finding())).contains("2026-02-27", "días pasados: 3");
        assertThat(spanish.now(rows.get(1).finding())).isEqualTo("sin calibrar (ninguno: sin calibrar)");
        assertThat(spanish.now(rows.get(2).finding())).contains("2026-03-11", "días que quedan: 10");
        assertThat(spanish.now(rows.get(2).remedy())).isEqualTo("Pida ya la calibración.");
        assertThat(rows.get(3).remedy()).isEqualTo(Word.NONE);
    }

    @Test
    void onItsLastDayACertificateHasOneDayLeft() throws Exception {
        List<Row> rows = rows(certificate(TODAY));
        assertThat(spanish.now(rows.get(0).finding())).contains("días que quedan: 1");
    }

    private static Certificate certificate(LocalDate due) {
        return new Certificate("P-77", Optional.of(TODAY.minusYears(1)), Optional.of(due));
    }

    private static List<Row> rows(Certificate... certificates) throws Exception {
        StandDescription usual =
                WindowTest.services(java.nio.file.Path.of("target")).shelf().stand("serial");
        MeterChannel meter = usual.channels().flowMeter();
        List<MeterChannel> meters = java.util.Arrays.stream(certificates)
                .map(each ->
                        new MeterChannel(meter.index(), meter.k(), meter.relativeUncertainty(), meter.least(), each))
                .toList();
        StandDescription stand = new StandDescription(
                usual.id(),
                usual.title(),
                usual.connection(),
                new Channels(meters, List.of()),
                usual.driver(),
                usual.nozzle(),
                usual.largeLoopNozzle(),
                usual.fluid(),
                usual.supplyVolts(),
                Optional.empty());
        return CalibrationRows.of(stand, TODAY);
    }
}
