package org.pumpwright.host.ui;

import java.util.Optional;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Language;

/**
 * How the window begins. Thread-safe.
 *
 * @param stand name of the stand, or path of its file
 * @param port overrides the port of the stand's description
 * @param language of everything it says
 * @param units of everything it shows
 * @param dark light type on dark ground
 * @param kiosk the whole display, without the frame of a window
 * @param keys the keys that can be chosen
 */
public record BenchSettings(
        String stand,
        Optional<String> port,
        Language language,
        UnitSystem units,
        boolean dark,
        boolean kiosk,
        BenchKeys keys) {}
