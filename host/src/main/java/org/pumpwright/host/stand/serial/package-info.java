/**
 * A stand on a serial port. The only place that uses the serial library. Uses stand and stand.wire.
 */
@NullMarked
package org.pumpwright.host.stand.serial;

import org.jspecify.annotations.NullMarked;
