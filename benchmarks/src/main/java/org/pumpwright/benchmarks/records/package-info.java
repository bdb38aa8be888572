/** How fast records are put into and found in both databases, and how long an audit takes. May use the host's ledger. */
@NullMarked
package org.pumpwright.benchmarks.records;

import org.jspecify.annotations.NullMarked;
