/**
 * Pictures of a claim: what they are, when they were taken, where their bytes are kept, and small ones for papers. May use
 * {@code claim}, {@code record.ledger} and the JDK.
 */
@NullMarked
package org.pumpwright.host.claim.photo;

import org.jspecify.annotations.NullMarked;
