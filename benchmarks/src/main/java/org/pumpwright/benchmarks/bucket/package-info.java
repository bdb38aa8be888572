/** Measures how often the stated intervals of bucket tests hold the true K-factor, over seeded made-up tests. May use the host; nothing uses it. */
@NullMarked
package org.pumpwright.benchmarks.bucket;

import org.jspecify.annotations.NullMarked;
