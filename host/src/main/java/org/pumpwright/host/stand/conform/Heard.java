package org.pumpwright.host.stand.conform;

import org.pumpwright.protocol.BoardMessage;

/**
 * A message from the board. Thread-safe.
 *
 * @param nanos the line's clock when its bytes were taken
 * @param message what it said
 */
record Heard(long nanos, BoardMessage message) {}
