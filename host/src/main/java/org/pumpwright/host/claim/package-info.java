/**
 * The warranty desk: a unit's intake, where it is and in whose hands, what the evidence shows, and what was decided on it. Knows
 * records, no stand. May use {@code record}, {@code grade}, {@code catalog}, {@code datafile}, {@code quantity}.
 */
@NullMarked
package org.pumpwright.host.claim;

import org.jspecify.annotations.NullMarked;
