/**
 * Physics of a metering pump driven by an oil motor behind a proportional valve: coil, spool, oil supply, oil motor,
 * product pump head (positive displacement or centrifugal), nozzle and large meter, healthy or with a named fault.
 * Assumed values, seeded, the same to the bit. Equations and values are in {@code
 * docs/metrology/plant-other-units.md}. Uses {@code plant}, the JDK and Hipparchus' root finder.
 */
@NullMarked
package org.pumpwright.host.plant.hydraulic;

import org.jspecify.annotations.NullMarked;
