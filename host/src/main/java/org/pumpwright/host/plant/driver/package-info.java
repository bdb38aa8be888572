/**
 * A returned pulse-width driver module feeding a dummy load on the stand, healthy or with a named fault. Assumed values,
 * seeded, the same to the bit. Equations and values are in {@code docs/metrology/plant-other-units.md}. Uses {@code
 * plant} and the JDK.
 */
@NullMarked
package org.pumpwright.host.plant.driver;

import org.jspecify.annotations.NullMarked;
