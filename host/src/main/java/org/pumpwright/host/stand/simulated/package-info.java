/**
 * A stand without hardware: a board in the program that speaks the same bytes through the same codec, in virtual time,
 * with a simulated unit on its pins. For practice, demonstration and tests; whatever is concluded from it says so. Uses
 * stand, stand.wire, trace, plant and the protocol's codec.
 */
@NullMarked
package org.pumpwright.host.stand.simulated;

import org.jspecify.annotations.NullMarked;
