/**
 * A returned pulse meter in series with the stand's master meter on the stand's loop, healthy or with a named fault:
 * rotor meters and electromagnetic ones, small and large. Assumed values, seeded, the same to the bit. Equations and
 * values are in {@code docs/metrology/plant-other-units.md}. Uses {@code plant} and the JDK.
 */
@NullMarked
package org.pumpwright.host.plant.meter;

import org.jspecify.annotations.NullMarked;
