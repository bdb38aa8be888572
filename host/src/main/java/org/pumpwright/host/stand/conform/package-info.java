/**
 * Tries a board's behaviour against the wire protocol, check by check, as a person with the specification and a line
 * analyser would. Knows the line and the codec but no stand, no plan and no unit. Uses stand, stand.wire, stand.simulated
 * and the codec.
 */
@NullMarked
package org.pumpwright.host.stand.conform;

import org.jspecify.annotations.NullMarked;
