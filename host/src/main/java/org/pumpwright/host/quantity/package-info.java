/**
 * Physical quantities that cross package borders, and values with their uncertainty. Inside a quantity the unit is SI;
 * every other unit is in the name of the method that makes or reads it. Uses nothing of the project.
 */
@NullMarked
package org.pumpwright.host.quantity;

import org.jspecify.annotations.NullMarked;
