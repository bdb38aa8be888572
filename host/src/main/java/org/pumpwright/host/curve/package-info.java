/**
 * What a healthy unit does: mean and spread of flow and motor current over effective volts, from known-good units, with
 * the tolerance factor that makes limits of them. Uses quantity, signal and datafile.
 */
@NullMarked
package org.pumpwright.host.curve;

import org.jspecify.annotations.NullMarked;
