/**
 * The few figures that a sweep of a 12 V pump really determines, with their uncertainties: flow per volt, no-load amps, amps
 * per pressure, circuit ohms and slip. A weighted nonlinear fit with the calibration errors that all points share; what
 * comes out worse than 25 % is withheld. Model and sources in docs/metrology/lumps.md. Uses quantity and a library of
 * numerical methods, nothing else of the project.
 */
@NullMarked
package org.pumpwright.host.grade.lump;

import org.jspecify.annotations.NullMarked;
