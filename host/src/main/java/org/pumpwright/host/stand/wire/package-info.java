/**
 * A stand that speaks the wire protocol over any two-way byte line. The serial port and the simulated board are lines;
 * everything that is said on them is here, once. Uses stand, trace, quantity and the protocol's codec.
 */
@NullMarked
package org.pumpwright.host.stand.wire;

import org.jspecify.annotations.NullMarked;
