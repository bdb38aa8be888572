/**
 * What a test stand is to the rest of the program, however it is reached: say hello, arm, drive, listen, make safe. Each
 * way of reaching one has a package of its own below this. Uses quantity, trace and datafile.
 */
@NullMarked
package org.pumpwright.host.stand;

import org.jspecify.annotations.NullMarked;
