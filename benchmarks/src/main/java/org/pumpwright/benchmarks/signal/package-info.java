/**
 * How good the signal treatment is, by seeded Monte Carlo: variance and coverage of the frequency beside the Cramer-Rao
 * bound, and how often the pulse classifier is right. Uses the host's signal package and its test trains.
 */
@NullMarked
package org.pumpwright.benchmarks.signal;

import org.jspecify.annotations.NullMarked;
