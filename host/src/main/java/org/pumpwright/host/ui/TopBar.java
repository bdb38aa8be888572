package org.pumpwright.host.ui;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.ObservableList;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.control.StandStrip;
import org.pumpwright.host.ui.work.Tick;
import org.pumpwright.host.ui.work.Word;

/** The top of the window: the shop's clock, the stand's health, and the switches of language, units and light. JavaFX thread only. */
final class TopBar extends HBox {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);

    private final Clock clock;
    private final Saying saying;
    private final BooleanProperty dark;
    private final Label time = new Label();
    private final Label day = new Label();
    private final Timeline ticking = new Timeline(new KeyFrame(Duration.seconds(1), over -> showTime()));

    TopBar(Saying saying, Clock clock, ObservableList<Tick> ticks, BooleanProperty dark) {
        this.saying = saying;
        this.clock = clock;
        this.dark = dark;
        getStyleClass().add("top-bar");
        time.getStyleClass().add("clock");
        day.getStyleClass().add("clock-day");
        StandStrip strip = new StandStrip(saying, ticks);
        HBox.setHgrow(strip, Priority.ALWAYS);
        getChildren().addAll(new VBox(time, day), strip, languageSwitch(), unitsSwitch(), lightSwitch());
        showTime();
        ticking.setCycleCount(Animation.INDEFINITE);
        ticking.play();
    }

    void flipLanguage() {
        Language now = saying.languageProperty().get();
        saying.languageProperty().set(now == Language.EN ? Language.ES : Language.EN);
    }

    void flipUnits() {
        UnitSystem now = saying.unitsProperty().get();
        saying.unitsProperty().set(now == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US);
    }

    void flipLight() {
        dark.set(!dark.get());
    }

    void stopClock() {
        ticking.stop();
    }

    private void showTime() {
        LocalDateTime now = LocalDateTime.now(clock);
        time.setText(TIME.format(now));
        day.setText(DAY.format(now));
    }

    private Button languageSwitch() {
        return flip("language", saying.text("ui.language.this"), this::flipLanguage);
    }

    private Button unitsSwitch() {
        ObservableValue<Word> units = Bindings.createObjectBinding(
                () -> Word.of("ui.units." + saying.unitsProperty().get().name().toLowerCase(Locale.ROOT)),
                saying.unitsProperty());
        return flip("units", saying.text(units), this::flipUnits);
    }

    private Button lightSwitch() {
        ObservableValue<Word> light =
                Bindings.createObjectBinding(() -> Word.of(dark.get() ? "ui.light.dark" : "ui.light.light"), dark);
        return flip("light", saying.text(light), this::flipLight);
    }

    private Button flip(String name, ObservableValue<String> now, Runnable deed) {
        Label caption = new Label();
        caption.getStyleClass().add("flip-caption");
        caption.textProperty().bind(saying.text("ui." + name));
        Button flip = new Button();
        flip.setId("flip-" + name);
        flip.getStyleClass().add("flip");
        flip.setGraphic(caption);
        flip.textProperty().bind(now);
        flip.setMaxHeight(Double.MAX_VALUE);
        flip.setOnAction(pressed -> deed.run());
        return flip;
    }
}
