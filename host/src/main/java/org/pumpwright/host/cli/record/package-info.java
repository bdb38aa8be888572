/**
 * The commands on what is on record: found, shown, handed out, taken in, checked, copied, amended. Uses the use cases of the
 * record and what the command line shares; knows no database.
 */
@NullMarked
package org.pumpwright.host.cli.record;

import org.jspecify.annotations.NullMarked;
