package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.ui.BenchServices;
import org.pumpwright.host.ui.WindowTest;

/** The strip's model, without a window: everything runs on the test's own thread. */
final class StandWatchModelTest {
    private final BenchServices services = WindowTest.services(Path.of("target"));
    private final List<Trouble> troubles = new ArrayList<>();
    private final StandWatchModel watch =
            new StandWatchModel(Background.inline(troubles::add), services.stands(), services.clock());
    private StandDescription simulated;

    @BeforeEach
    void choose() throws Exception {
        simulated = services.shelf().stand("simulated");
        watch.choose(simulated, Optional.empty());
    }

    @Test
    void nothingIsKnownOfAStandThatIsNotReadButItsCalibrations() {
        assertThat(marks()).isEqualTo("UNKNOWN UNKNOWN UNKNOWN UNKNOWN UNKNOWN WATCH");
        assertThat(watch.readings()).isEmpty();
    }

    @Test
    void aReadStandShowsEveryChannel() {
        watch.start();
        assertThat(marks()).isEqualTo("GOOD GOOD GOOD GOOD GOOD WATCH");
        assertThat(watch.readings()).hasSize(6);
        assertThat(troubles).isEmpty();
    }

    @Test
    void openInputsAndAnArmedBoardShow() {
        watch.heard(simulated.channels(), sample(true, true, true), sample(true, false, false));
        assertThat(marks()).startsWith("GOOD BAD BAD WATCH");
    }

    @Test
    void aStandThatCanNotBeReachedIsTroubleAndALostLink() throws Exception {
        watch.choose(services.shelf().stand("serial"), Optional.of("/dev/no-such-port"));
        watch.start();
        assertThat(marks()).startsWith("BAD UNKNOWN");
        assertThat(watch.watchingProperty().get()).isFalse();
        assertThat(troubles)
                .singleElement()
                .satisfies(trouble -> assertThat(trouble.detail()).contains("/dev/no-such-port"));
    }

    @Test
    void workAsideHasTheStandForItselfAndTheWatchComesBack() {
        watch.start();
        List<Boolean> watching = new ArrayList<>();
        watch.aside(() -> watching.add(watch.watchingProperty().get()), added -> {});
        assertThat(watching).containsExactly(false);
        assertThat(watch.watchingProperty().get()).isTrue();
    }

    @Test
    void theWorstCalibrationIsTheOneThatShows() {
        LocalDate today = LocalDate.of(2026, 3, 2);
        assertThat(calibration(today, today)).isEqualTo(Mark.GOOD);
        assertThat(calibration(today, today.minusDays(1))).isEqualTo(Mark.BAD);
    }

    @Test
    void aWindowThatWasHeldUpSaysSo() {
        watch.screenHeldUp(300);
        assertThat(watch.ticks()).hasSize(6);
        assertThat(watch.ticks().get(5).state()).isEqualTo(Word.of("ui.tick.screen.held_up", 300));
    }

    private Mark calibration(LocalDate today, LocalDate due) {
        Certificate certificate = new Certificate("P-77", Optional.of(LocalDate.of(2025, 1, 10)), Optional.of(due));
        Channels all = simulated.channels();
        Channels dated = new Channels(
                all.meters().stream()
                        .map(each -> new MeterChannel(
                                each.index(), each.k(), each.relativeUncertainty(), each.least(), certificate))
                        .toList(),
                all.analogs().stream()
                        .map(each -> new AnalogChannel(each.role(), each.index(), each.calibration(), certificate))
                        .toList());
        return StandTicks.unheard(dated, today, LinkState.OFF).get(5).mark();
    }

    private static Sample sample(boolean armed, boolean emergencyStopClosed, boolean guardClosed) {
        return new Sample(
                0,
                List.of(new Sample.MeterCount(0, 0), new Sample.MeterCount(0, 0)),
                List.of(reading(), reading(), reading(), reading()),
                List.of(new Duty(0)),
                armed,
                emergencyStopClosed,
                guardClosed);
    }

    private static Sample.AnalogReading reading() {
        return new Sample.AnalogReading(20_000, 20_000, 20_000);
    }

    private String marks() {
        return watch.ticks().stream().map(tick -> tick.mark().name()).collect(Collectors.joining(" "));
    }
}
