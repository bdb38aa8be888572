package org.pumpwright.host.plant;

import java.util.Random;

/**
 * The unit's circuit from its pins to the brushes as it opens and closes by itself: thermal protector, pressure switch
 * and loose contact in series. Confined to the plant's thread.
 */
final class UnitCircuit {

    /** Large enough that the current is nil to any ammeter, finite so that no arithmetic breaks. */
    static final double OPEN_OHMS = 1e9;

    private final CircuitParameters parameters;
    private final PressureSwitch pressureSwitch;
    private final Telegraph looseness;
    private boolean tripped;

    UnitCircuit(CircuitParameters parameters, Random switchRandom, Random looseRandom) {
        this.parameters = parameters;
        pressureSwitch = new PressureSwitch(parameters.pressureSwitch(), switchRandom);
        looseness = new Telegraph(parameters.loose().opensPerMinute(), looseRandom);
    }

    boolean open() {
        return tripped || pressureSwitch.open() || looseness.open();
    }

    /** Lets time pass at a winding temperature and a pressure, with the wire moved by hand or not. */
    void advance(double seconds, double windingKelvin, double pressurePa, boolean wiggled) {
        tripped = windingKelvin
                >= (tripped
                        ? parameters.protector().closesKelvin()
                        : parameters.protector().opensKelvin());
        pressureSwitch.advance(seconds, pressurePa);
        looseness.advance(seconds, parameters.loose().provoked(windingKelvin, wiggled));
    }
}
