package org.pumpwright.host.ui;

import java.time.Clock;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.css.PseudoClass;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.ui.work.StopPress;
import org.pumpwright.host.ui.work.Tick;
import org.pumpwright.host.ui.work.Trouble;

/**
 * The frame that every screen stands in: the stand's health above, the moments of the work at the left, the screen, six big actions and
 * STOP below. Nothing ever lies over STOP, and nothing makes the window wait. JavaFX thread only.
 */
public final class BenchWindow implements Frame, AutoCloseable {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double LEAST_TYPE = 18;
    private static final double MOST_TYPE = 32;
    private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

    private final Saying saying;
    private final Clock clock;
    private final StopPress stop = new StopPress();
    private final Map<Moment, Screen> screens = new EnumMap<>(Moment.class);
    private final Map<Moment, Supplier<Screen>> unbuilt = new EnumMap<>(Moment.class);
    private final ObjectProperty<Moment> current = new SimpleObjectProperty<>();
    private final BooleanProperty dark = new SimpleBooleanProperty();
    private final ScanListener scans;
    private final CueGiver cues;
    private final TopBar top;
    private final BenchLayout layout;
    private final Scene scene;
    private @Nullable Prompt asked;

    /**
     * An empty frame; screens are added to it.
     *
     * @param clock the shop's time and zone
     * @param ticks the stand's health
     */
    public BenchWindow(Saying saying, Clock clock, ObservableList<Tick> ticks, BenchKeys keys) {
        this.saying = saying;
        this.clock = clock;
        this.scans = new ScanListener(clock);
        BenchFonts.load();
        cues = new CueGiver(saying);
        top = new TopBar(saying, clock, ticks, dark);
        layout = new BenchLayout(
                saying,
                top,
                new MomentRail(saying, this::goTo),
                new StopKnob(saying, keys.stopWords(), this::pressStop),
                cues);
        scene = new Scene(layout, WIDTH, HEIGHT);
        scene.getStylesheets().add(BenchFonts.styleSheet());
        dark.addListener((observed, old, now) -> layout.pseudoClassStateChanged(DARK, now));
        layout.styleProperty()
                .bind(Bindings.createStringBinding(this::typeSize, scene.widthProperty(), scene.heightProperty()));
        KeyRouter router = new KeyRouter(keys, this);
        scene.addEventFilter(KeyEvent.ANY, router);
        scene.windowProperty().flatMap(Window::focusedProperty).addListener((observed, old, now) -> router.forget());
    }

    /** Adds a screen; the first one added comes to the front. */
    public void add(Screen screen) {
        add(screen.moment(), () -> screen);
    }

    /** Adds a screen that is built when somebody goes there, or by {@link #buildOne}: the window is there sooner. */
    public void add(Moment moment, Supplier<Screen> screen) {
        unbuilt.put(moment, screen);
        layout.rail().add(moment);
        if (current.get() == null) {
            goTo(moment);
        }
    }

    /** Builds one of the screens that nobody has gone to yet; false when there is none left. */
    boolean buildOne() {
        unbuilt.keySet().stream().findFirst().ifPresent(this::screen);
        return !unbuilt.isEmpty();
    }

    private @Nullable Screen screen(Moment moment) {
        Supplier<Screen> waiting = unbuilt.remove(moment);
        if (waiting != null) {
            screens.put(moment, waiting.get());
        }
        return screens.get(moment);
    }

    /** The whole window's content. */
    public Scene scene() {
        return scene;
    }

    /** Light type on dark ground, or dark on light. */
    public BooleanProperty darkProperty() {
        return dark;
    }

    /** The moment whose screen is in front. */
    public Moment current() {
        return current.get();
    }

    @Override
    public Saying saying() {
        return saying;
    }

    @Override
    public StopPress stop() {
        return stop;
    }

    @Override
    public void goTo(Moment moment) {
        Screen next = screen(moment);
        if (next == null || moment == current.get()) {
            return;
        }
        Optional.ofNullable(current.get()).map(screens::get).ifPresent(Screen::hidden);
        withdraw();
        current.set(moment);
        layout.rail().mark(moment);
        layout.show(next);
        layout.actions().show(next.actions());
        layout.requestFocus();
        next.shown();
    }

    @Override
    public void ask(Prompt prompt) {
        asked = prompt;
        layout.prompt().show(prompt);
        layout.actions()
                .show(FXCollections.observableList(prompt.answers().stream()
                        .map(answer -> answering(prompt, answer))
                        .toList()));
    }

    private Action answering(Prompt prompt, Action answer) {
        Action closing = Action.of(answer.word(), () -> {
                    if (prompt.equals(asked)) {
                        withdraw();
                    }
                    answer.perform();
                })
                .when(answer.enabled());
        return answer.isNothing() ? answer : answer.isNext() ? closing.asNext() : closing;
    }

    @Override
    public void withdraw() {
        if (asked != null) {
            asked = null;
            layout.prompt().hide();
            // A key that comes before the next pulse would go to a field that is gone, and STOP's key with it.
            layout.requestFocus();
            Optional.ofNullable(screens.get(current.get()))
                    .ifPresent(screen -> layout.actions().show(screen.actions()));
        }
    }

    @Override
    public void trouble(Trouble trouble) {
        layout.banner().add(trouble);
        cues.give(Cue.ALARM);
    }

    @Override
    public void cue(Cue cue) {
        cues.give(cue);
    }

    /** STOP, from whichever key or button: first the stand, then the window. */
    void pressStop() {
        stop.press("STOP was pressed in the window");
        LocalTime now = LocalTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
        withdraw();
        layout.banner().stopped(now);
        cues.give(Cue.ALARM);
    }

    void performNext() {
        layout.actions().performNext();
    }

    /** Alt and a digit: the moment with that digit. */
    void goTo(KeyCode digit) {
        String name = digit.name();
        int number = name.charAt(name.length() - 1) - '0';
        for (Moment moment : Moment.values()) {
            if (moment.digit() == number) {
                goTo(moment);
            }
        }
    }

    /** Control and a letter: one of the switches. */
    void flip(KeyCode letter) {
        switch (letter) {
            case L -> top.flipLanguage();
            case U -> top.flipUnits();
            default -> top.flipLight();
        }
    }

    void function(KeyCode key) {
        switch (key) {
            case F7 -> layout.help().toggle();
            case F8 -> layout.banner().acknowledge();
            default -> layout.actions().perform(Integer.parseInt(key.getName().substring(1)) - 1);
        }
    }

    /** Takes a typed character; true when it ended a scan. What the scanner typed into a field is taken out again. */
    boolean typed(char character) {
        Optional<String> scanned = scans.typed(character);
        scanned.ifPresent(text -> {
            takeOut(text);
            Optional.ofNullable(screens.get(current.get())).ifPresent(screen -> screen.scanned(text));
        });
        return scanned.isPresent();
    }

    private void takeOut(String scanned) {
        if (scene.getFocusOwner() instanceof TextInputControl field && field.isEditable()) {
            int caret = field.getCaretPosition();
            int from = caret - scanned.length();
            if (from >= 0 && field.getText(from, caret).equals(scanned)) {
                field.deleteText(from, caret);
            }
        }
    }

    private String typeSize() {
        double share = Math.min(scene.getWidth() / WIDTH, scene.getHeight() / HEIGHT);
        double size = Math.max(LEAST_TYPE, Math.min(MOST_TYPE, LEAST_TYPE * share));
        return String.format(Locale.ROOT, "-fx-font-size: %.1fpx;", size);
    }

    @Override
    public void close() {
        top.stopClock();
        cues.close();
        stop.close();
    }
}
