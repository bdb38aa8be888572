/**
 * A planter's supply harness between battery and pump with a known load at its far end, healthy or with a named fault:
 * wires by gauge and length, joints, fuse, ground. Assumed values, seeded, the same to the bit. Equations and values are
 * in {@code docs/metrology/plant-other-units.md}. Uses {@code plant}, the JDK and Hipparchus' root finder.
 */
@NullMarked
package org.pumpwright.host.plant.harness;

import org.jspecify.annotations.NullMarked;
