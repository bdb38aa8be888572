/**
 * What is worked out beside the planter with a jug and a watch: a new K from an old one, a catch test over the rows, the ounce
 * method. Pure arithmetic. Uses quantity.
 */
@NullMarked
package org.pumpwright.host.calibrate.field;

import org.jspecify.annotations.NullMarked;
