package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.text.Language;

/** How the window begins, as far as that needs no window. */
final class BenchLauncherTest {
    @Test
    void withoutADisplayItSaysWhatToDo() throws Exception {
        BenchServices services = WindowTest.services(Path.of("target"));
        StandDescription stand = services.shelf().stand("simulated");
        BenchSettings settings = new BenchSettings(
                "simulated", Optional.empty(), Language.EN, UnitSystem.US, false, false, BenchKeys.USUAL);

        assertThatThrownBy(() -> BenchLauncher.show(settings, services, stand, Map.of()))
                .isInstanceOf(OrderException.class)
                .hasMessageContaining("there is no display here")
                .hasMessageContaining("ssh -X");
    }

    @Test
    void pedalsHaveTheKeysThatTheySend() throws Exception {
        BenchKeys keys = BenchKeys.named(Optional.of("Page Down"), Optional.of("f10"));

        assertThat(keys).isEqualTo(new BenchKeys(List.of(KeyCode.ESCAPE, KeyCode.PAGE_DOWN), KeyCode.F10));
        assertThat(BenchKeys.named(Optional.empty(), Optional.empty())).isEqualTo(BenchKeys.USUAL);
    }

    @Test
    void oneKeyIsNotBothStopAndPedal() {
        assertThatThrownBy(() -> BenchKeys.named(Optional.of("F10"), Optional.of("F10")))
                .isInstanceOf(OrderException.class)
                .hasMessage("key F10 can't be both STOP and the pedal. Give the pedal another key with --pedal.");
    }

    @Test
    void aKeyThatIsNoneIsRefused() {
        assertThatThrownBy(() -> BenchKeys.named(Optional.of("Any"), Optional.empty()))
                .isInstanceOf(OrderException.class)
                .hasMessageStartingWith("'Any' is no key.");
    }
}
