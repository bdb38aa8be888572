/** How long it takes to judge stored runs again. Uses the program as its command line does; prints tables. */
@NullMarked
package org.pumpwright.benchmarks.regrade;

import org.jspecify.annotations.NullMarked;
