/**
 * Puts on record what the program does, and finds, shows, hands out, takes in, checks and amends what is on record. The one
 * place that picks the store. Begin at {@code RecordBook}. Uses the other use cases and what they use, never the other way
 * round.
 */
@NullMarked
package org.pumpwright.host.app.record;

import org.jspecify.annotations.NullMarked;
