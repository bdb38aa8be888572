/**
 * What is kept of a test, whole and unchangeable: who tested what with which stand, plan and curve, the trace, and the
 * judgement. Uses the domain: grade, trace, plan, curve, stand (its description) and quantity.
 */
@NullMarked
package org.pumpwright.host.record;

import org.jspecify.annotations.NullMarked;
