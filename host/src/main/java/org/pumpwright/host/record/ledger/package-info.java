/**
 * What a shop has put on record, entry after entry: canonical form, hash chain, signatures, the audit that checks them, and
 * what a store of entries must do. Knows no database and nothing of what an entry is about. May use the JDK and the library
 * for canonical JSON.
 */
@NullMarked
package org.pumpwright.host.record.ledger;

import org.jspecify.annotations.NullMarked;
