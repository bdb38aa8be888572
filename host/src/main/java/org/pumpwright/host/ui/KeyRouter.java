package org.pumpwright.host.ui;

import java.util.EnumSet;
import java.util.Set;
import javafx.event.EventHandler;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * What keys do, before any control sees them; STOP comes first of all. A key that is held down acts once, but for STOP. JavaFX thread
 * only.
 */
final class KeyRouter implements EventHandler<KeyEvent> {
    private final BenchKeys keys;
    private final BenchWindow window;
    private final Set<KeyCode> down = EnumSet.noneOf(KeyCode.class);

    KeyRouter(BenchKeys keys, BenchWindow window) {
        this.keys = keys;
        this.window = window;
    }

    @Override
    public void handle(KeyEvent event) {
        if (event.getEventType() == KeyEvent.KEY_PRESSED) {
            pressed(event);
        } else if (event.getEventType() == KeyEvent.KEY_RELEASED) {
            down.remove(event.getCode());
        } else {
            typed(event);
        }
    }

    /** The window lost the keyboard: keys let go elsewhere are not told. */
    void forget() {
        down.clear();
    }

    private void pressed(KeyEvent event) {
        if (keys.stop().contains(event.getCode())) {
            window.pressStop();
            event.consume();
            return;
        }
        if (acts(event) && down.add(event.getCode())) {
            act(event);
        }
    }

    private boolean acts(KeyEvent event) {
        KeyCode code = event.getCode();
        boolean plain = code == keys.pedal() || code.isFunctionKey();
        boolean withAlt = event.isAltDown() && code.isDigitKey();
        boolean withControl = event.isControlDown() && (code == KeyCode.L || code == KeyCode.U || code == KeyCode.D);
        return plain || withAlt || withControl;
    }

    private void act(KeyEvent event) {
        KeyCode code = event.getCode();
        if (code == keys.pedal()) {
            window.performNext();
        } else if (event.isAltDown()) {
            window.goTo(code);
        } else if (event.isControlDown()) {
            window.flip(code);
        } else {
            window.function(code);
        }
        event.consume();
    }

    private void typed(KeyEvent event) {
        if (!event.getCharacter().isEmpty() && window.typed(event.getCharacter().charAt(0))) {
            event.consume();
        }
    }
}
