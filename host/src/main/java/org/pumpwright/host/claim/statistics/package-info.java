/**
 * What returned units teach together: shares with their intervals, months in service, life of each failure mode, batches that come
 * back more often than the rest, the shop's own figures. Pure arithmetic on plain facts: reads no file, no clock, no claim. May use
 * {@code quantity}; the distributions come from the numerical library.
 */
@NullMarked
package org.pumpwright.host.claim.statistics;

import org.jspecify.annotations.NullMarked;
