/**
 * Bucket tests made up from a meter whose K is known, with every error of the budget drawn from what is said of it: with these
 * it is counted how often a stated interval holds the truth. Seeded. Uses calibrate and quantity.
 */
@NullMarked
package org.pumpwright.host.calibrate.simulated;

import org.jspecify.annotations.NullMarked;
