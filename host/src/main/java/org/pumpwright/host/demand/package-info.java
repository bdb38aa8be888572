/**
 * What a planter needs against what a unit gives: rows, spacing, rate, speed and product to flows and pulses. Pure
 * arithmetic; may use {@code quantity}.
 */
@NullMarked
package org.pumpwright.host.demand;

import org.jspecify.annotations.NullMarked;
