package org.pumpwright.host.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/**
 * A person at the window: presses keys, reads what it says, waits. Knows the window by ids, styles and words only, never by what lies
 * behind it. Any thread but the JavaFX thread.
 */
final class Hands {
    private static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");
    private static final int SECONDS = 90;
    private static final int MOST_LEAVES = 10;
    private static final int MOST_TABS = 120;
    private static final long GLANCE_NANOS = 20_000_000;
    private static final long PERSON_NANOS = 150_000_000;

    private final Scene scene;
    private final Keyboard keyboard;

    Hands(Scene scene, Keyboard keyboard) {
        this.scene = scene;
        this.keyboard = keyboard;
    }

    Scene scene() {
        return scene;
    }

    void press(KeyCode key) throws Exception {
        act(() -> keyboard.press(key));
    }

    void press(KeyCode held, KeyCode key) throws Exception {
        act(() -> keyboard.press(held, key));
    }

    void goTo(Moment moment) throws Exception {
        press(KeyCode.ALT, KeyCode.valueOf("DIGIT" + moment.digit()));
        await("the moment " + moment, () -> isAt(moment));
    }

    /** Whether the screen of this moment is in front. */
    boolean isAt(Moment moment) {
        return scene.lookup("#moment-" + moment.key()).getPseudoClassStates().contains(CURRENT);
    }

    /** Goes with Tab, forwards, until this has the keyboard. */
    void tabTo(String id) throws Exception {
        await("a control called " + id, () -> isDrawn(scene.lookup("#" + id)));
        for (int tab = 0; tab < MOST_TABS; tab++) {
            if (look(() -> has(id))) {
                return;
            }
            press(KeyCode.TAB);
        }
        throw new AssertionError(
                "Tab does not reach " + id + "; it stands at " + look(() -> String.valueOf(scene.getFocusOwner())));
    }

    /** A control that was just made gets what answers its keys with the next pulse; nobody presses sooner than that. */
    private static boolean isDrawn(@Nullable Node node) {
        return node != null && (!(node instanceof Control control) || control.getSkin() != null);
    }

    private boolean has(String id) {
        Node owner = scene.getFocusOwner();
        return isDrawn(owner) && id.equals(owner.getId());
    }

    /** Chooses the button with the space bar. A window that has just come up may still take the keyboard elsewhere in between. */
    void choose(String id) throws Exception {
        boolean pressed = false;
        while (!pressed) {
            tabTo(id);
            pressed = look(() -> {
                boolean there = has(id);
                if (there) {
                    keyboard.press(KeyCode.SPACE);
                }
                return there;
            });
        }
    }

    /** Writes into a field. */
    void write(String id, String text) throws Exception {
        tabTo(id);
        act(() -> keyboard.type(text));
        await(
                "the field %s with %s in it".formatted(id, text),
                () -> ((TextInputControl) scene.lookup("#" + id)).getText().equals(text));
        // A person takes longer for the next thing than a scanner between two characters.
        LockSupport.parkNanos(PERSON_NANOS);
    }

    /** Presses the key of an action once it can be done. */
    void act(KeyCode key) throws Exception {
        awaitAction(key);
        press(key);
    }

    void awaitAction(KeyCode key) throws Exception {
        await("an action at " + key, () -> canDo(key));
    }

    /** Whether the action at this key can be done. */
    boolean canDo(KeyCode key) {
        Node button = scene.lookup("#action-" + key.getName().substring(1));
        return button != null && !button.isDisabled();
    }

    /** The banner's words; empty when there is none. */
    String banner() throws Exception {
        return look(() -> {
            Node banner = scene.lookup("#banner");
            return banner.isVisible() ? String.join("\n", words(banner)) : "";
        });
    }

    /** Says that each trouble was understood, until none is left. */
    List<String> understandAll() throws Exception {
        List<String> all = new ArrayList<>();
        for (String said = banner(); !said.isEmpty(); said = banner()) {
            all.add(said);
            press(KeyCode.F8);
            String before = said;
            await(
                    "the banner to go",
                    () -> !String.join("\n", words(scene.lookup("#banner"))).equals(before)
                            || !scene.lookup("#banner").isVisible());
        }
        return all;
    }

    /** Everything that can be read in the window now. */
    String says() throws Exception {
        return look(() -> String.join("\n", words(scene.getRoot())));
    }

    void awaitWords(String words) throws Exception {
        await("the words '" + words + "'", () -> reads(words));
    }

    /** Whether these words can be read in the window. JavaFX thread only. */
    boolean reads(String words) {
        return words(scene.getRoot()).stream().anyMatch(each -> each.contains(words));
    }

    /** Answers a question that lists lines with their keys: by the key of the line with these words, turning leaves until it is there. */
    void pick(String words) throws Exception {
        Pattern line = Pattern.compile("F([1-6])\\s+.*" + Pattern.quote(words) + ".*");
        for (int leaf = 0; leaf < MOST_LEAVES; leaf++) {
            Optional<KeyCode> key = look(() -> words(scene.lookup("#prompt")).stream()
                    .map(line::matcher)
                    .filter(Matcher::matches)
                    .map(found -> KeyCode.valueOf("F" + found.group(1)))
                    .findFirst());
            press(key.orElse(KeyCode.F5));
            if (key.isPresent()) {
                return;
            }
        }
        throw new AssertionError("nothing with '%s' to choose; the window says:%n%s".formatted(words, says()));
    }

    /** Whether a question lies over the screen. JavaFX thread only. */
    boolean isAsked() {
        return scene.lookup("#prompt").isVisible();
    }

    private static List<String> words(Node node) {
        List<String> found = new ArrayList<>();
        if (!node.isVisible()) {
            return found;
        }
        if (node instanceof Labeled labeled && labeled.getText() != null) {
            found.add(labeled.getText());
        } else if (node instanceof Text text) {
            found.add(text.getText());
        }
        if (node instanceof Labeled labeled) {
            Optional.ofNullable(labeled.getGraphic()).ifPresent(graphic -> found.addAll(words(graphic)));
        } else if (node instanceof ScrollPane pane && pane.getContent() != null) {
            found.addAll(words(pane.getContent()));
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> found.addAll(words(child)));
        }
        return found;
    }

    void await(String what, Callable<Boolean> holds) throws Exception {
        await(what, SECONDS, holds);
    }

    /** Waits until something holds, looked at on the JavaFX thread. */
    void await(String what, int seconds, Callable<Boolean> holds) throws Exception {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        while (!look(holds)) {
            if (System.nanoTime() > until) {
                throw new AssertionError(
                        "%s did not come within %d s; the window says:%n%s".formatted(what, seconds, says()));
            }
            LockSupport.parkNanos(GLANCE_NANOS);
        }
    }

    private void act(Runnable action) throws Exception {
        look(() -> {
            action.run();
            return true;
        });
        // What went through the window system comes back by it: the scene is told a little later.
        look(() -> true);
    }

    static <T> T look(Callable<T> work) throws Exception {
        CompletableFuture<T> seen = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                seen.complete(work.call());
            } catch (Exception | Error e) {
                seen.completeExceptionally(e);
            }
        });
        return seen.get(SECONDS, TimeUnit.SECONDS);
    }

    /** The scene of the only window, once there is one. */
    static Scene onlyWindow() throws Exception {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
        while (System.nanoTime() < until) {
            try {
                List<Window> open = look(() -> Window.getWindows().stream()
                        .filter(Window::isShowing)
                        .filter(Window::isFocused)
                        .toList());
                if (open.size() == 1) {
                    return look(() -> open.get(0).getScene());
                }
            } catch (IllegalStateException early) {
                // The toolkit is only being started.
                LockSupport.parkNanos(GLANCE_NANOS);
            }
            LockSupport.parkNanos(GLANCE_NANOS);
        }
        throw new AssertionError("no window has come up and has the keyboard");
    }
}
