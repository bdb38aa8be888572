/**
 * What ending a point as soon as its flow is known well enough saves against fixed dwells, and what it costs: bench time,
 * uncertainty and bias of the flow, and verdicts, over a seeded mix of simulated units. May use the host; nothing uses it.
 */
@NullMarked
package org.pumpwright.benchmarks.dwell;

import org.jspecify.annotations.NullMarked;
