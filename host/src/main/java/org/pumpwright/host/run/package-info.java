/**
 * Carries a plan out on a stand: set points, settling, measuring, stop rules, and one path to safe that every ending
 * takes. Says what happens as it happens and yields a trace. Uses plan, stand, trace, signal and quantity.
 */
@NullMarked
package org.pumpwright.host.run;

import org.jspecify.annotations.NullMarked;
