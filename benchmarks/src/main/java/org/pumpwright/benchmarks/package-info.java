/**
 * Measures how fast the codec decodes and what it allocates, beside Protocol Buffers. May use the codec, JMH and
 * Protocol Buffers; nothing uses it.
 */
@NullMarked
package org.pumpwright.benchmarks;

import org.jspecify.annotations.NullMarked;
