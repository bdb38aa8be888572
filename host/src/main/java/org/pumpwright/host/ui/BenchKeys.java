package org.pumpwright.host.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.input.KeyCode;
import org.pumpwright.host.app.OrderException;

/**
 * The keys that can be chosen; foot pedals send keys. Thread-safe.
 *
 * @param stop every key that is STOP
 * @param pedal the key of the pedal that does the first action that can be done
 */
public record BenchKeys(List<KeyCode> stop, KeyCode pedal) {
    /** Esc, Pause and F12 stop; F9 is the pedal. */
    public static final BenchKeys USUAL =
            new BenchKeys(List.of(KeyCode.ESCAPE, KeyCode.PAUSE, KeyCode.F12), KeyCode.F9);

    public BenchKeys {
        stop = List.copyOf(stop);
        if (!stop.contains(KeyCode.ESCAPE)) {
            throw new IllegalArgumentException("Esc must be among the keys of STOP");
        }
        if (stop.contains(pedal)) {
            throw new IllegalArgumentException("key %s can't be STOP and the pedal".formatted(pedal.getName()));
        }
    }

    /**
     * Keys by their names, such as {@code F9} or {@code Page Down}.
     *
     * @param stopName another key that is STOP besides Esc; empty for the usual ones
     * @param pedalName the pedal's; empty for the usual one
     * @throws OrderException when there is no such key, or one is to be both
     */
    public static BenchKeys named(Optional<String> stopName, Optional<String> pedalName) throws OrderException {
        List<KeyCode> stop = stopName.isPresent() ? List.of(KeyCode.ESCAPE, key(stopName.get())) : USUAL.stop();
        KeyCode pedal = pedalName.isPresent() ? key(pedalName.get()) : USUAL.pedal();
        if (stop.contains(pedal)) {
            throw new OrderException("key %s can't be both STOP and the pedal. Give the pedal another key with --pedal."
                    .formatted(pedal.getName()));
        }
        return new BenchKeys(stop, pedal);
    }

    private static KeyCode key(String name) throws OrderException {
        return Arrays.stream(KeyCode.values())
                .filter(code ->
                        code.name().equalsIgnoreCase(name) || code.getName().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new OrderException(
                        "'%s' is no key. Give a name such as F9, Pause or \"Page Down\".".formatted(name)));
    }

    /** STOP's keys as the button shows them. */
    String stopWords() {
        return stop.stream().map(KeyCode::getName).collect(Collectors.joining(" \u00b7 "));
    }
}
