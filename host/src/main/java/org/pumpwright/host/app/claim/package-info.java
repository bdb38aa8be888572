/**
 * What is done at the warranty desk: claims are opened, moved, found on, decided, listed and packed up, each act one entry on
 * record. Begin at {@code ClaimDesk}. Uses the other use cases and what they use, never the other way round.
 */
@NullMarked
package org.pumpwright.host.app.claim;

import org.jspecify.annotations.NullMarked;
