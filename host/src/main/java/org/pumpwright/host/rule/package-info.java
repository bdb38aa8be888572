/**
 * What a shop judges by besides a healthy curve: the guard, how far a reading may be corrected, what one run cannot show,
 * the limits of single readings and what is tried when a verdict is in doubt. All of it is data, and every number knows
 * the file, the version and the line it comes from. Uses quantity, catalog and datafile.
 */
@NullMarked
package org.pumpwright.host.rule;

import org.jspecify.annotations.NullMarked;
