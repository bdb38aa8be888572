/** How long it takes to make the papers of a record as documents. Uses the invented records of the host's tests; prints a table. */
@NullMarked
package org.pumpwright.benchmarks.papers;

import org.jspecify.annotations.NullMarked;
