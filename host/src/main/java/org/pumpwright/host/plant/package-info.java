/**
 * Physics of a unit on the stand: a 12 V brushed-motor diaphragm pump with its supply, hoses, nozzle, pulse meter and
 * sensors, healthy or with a named fault. Used for practice, for demonstrations and for statistical tests of the
 * grading; anything concluded from it is a statement about the model, never about real units. Everything random is
 * seeded: the same seed gives the same output to the bit. Equations and values are explained in {@code
 * docs/metrology/plant.md}. Uses the JDK and Hipparchus' root finder, and nothing else of the program.
 */
@NullMarked
package org.pumpwright.host.plant;

import org.jspecify.annotations.NullMarked;
