/**
 * How often a verdict is wrong: seeded Monte Carlo over healthy, borderline and faulty simulated units, each taken through the
 * quick plan on the simulated stand and graded by a curve of other simulated units, beside a flat band and the best possible
 * tests; with the physics that the causes were worked out by, and with physics that they do not know. May use the host; nothing
 * uses it.
 */
@NullMarked
package org.pumpwright.benchmarks.judgement;

import org.jspecify.annotations.NullMarked;
