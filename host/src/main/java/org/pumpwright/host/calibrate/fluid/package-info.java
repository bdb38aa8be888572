/**
 * Densities that turn a weighed bucket into a volume: water, air, products, and the lift of air on what is weighed. Pure
 * arithmetic. Uses quantity.
 */
@NullMarked
package org.pumpwright.host.calibrate.fluid;

import org.jspecify.annotations.NullMarked;
