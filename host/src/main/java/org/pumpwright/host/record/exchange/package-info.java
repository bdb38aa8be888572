/**
 * Records on their way: what waits to be entered, and what is handed out or taken in, in forms that other programs read. Uses
 * records and the ledger, knows no database.
 */
@NullMarked
package org.pumpwright.host.record.exchange;

import org.jspecify.annotations.NullMarked;
