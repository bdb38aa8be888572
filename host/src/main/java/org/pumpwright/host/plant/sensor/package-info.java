/**
 * Sensors of a simulated stand that are broken rather than inexact: stuck, open, shorted, noisy or of the wrong scale,
 * around any plant. For trying whether the self-checks find them. Uses the plant's interface and the JDK.
 */
@NullMarked
package org.pumpwright.host.plant.sensor;

import org.jspecify.annotations.NullMarked;
