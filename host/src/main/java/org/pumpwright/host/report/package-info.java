/**
 * Papers made of a record: text for the terminal, one HTML page to print. Everything on them comes from the record alone,
 * so a stored run prints the same at any time. Uses record and the domain types in it.
 */
@NullMarked
package org.pumpwright.host.report;

import org.jspecify.annotations.NullMarked;
