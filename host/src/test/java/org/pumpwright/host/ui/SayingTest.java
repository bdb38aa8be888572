package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.beans.binding.StringBinding;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.work.Word;

final class SayingTest {
    private final Saying saying = new Saying(Language.EN, UnitSystem.US);

    @Test
    void aTextFollowsTheLanguage() {
        StringBinding stop = saying.text("ui.stop");
        assertThat(stop.get()).isEqualTo("STOP");
        saying.languageProperty().set(Language.ES);
        assertThat(stop.get()).isEqualTo("PARAR");
    }

    @Test
    void aQuantityInAGapFollowsTheUnits() {
        StringBinding late = saying.text("ui.channel.meter", (Word.Measured) Pressure.ofPsi(100)::print);
        assertThat(late.get()).isEqualTo("Flow, meter 100.0 psi");
        saying.unitsProperty().set(UnitSystem.METRIC);
        assertThat(late.get()).isEqualTo("Flow, meter 689 kPa");
    }

    @Test
    void anObservedGapIsFollowed() {
        SimpleObjectProperty<Integer> meter = new SimpleObjectProperty<>(0);
        StringBinding name = saying.text("ui.channel.meter", meter);
        meter.set(1);
        assertThat(name.get()).isEqualTo("Flow, meter 1");
    }

    @Test
    void aWordMayStandInAnother() {
        Word outer = Word.of("ui.channel.meter", Word.of("ui.tick.guard"));
        saying.languageProperty().set(Language.ES);
        assertThat(saying.now(outer)).isEqualTo("Flujo, medidor Guarda");
        assertThat(saying.now(Word.asIs("SN-1042"))).isEqualTo("SN-1042");
    }
}
