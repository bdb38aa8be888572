/**
 * Signal treatment: frequency of a pulse train and its uncertainty, means, settling. Pure functions over arrays; no stand,
 * no files, no clock. Uses quantity.
 */
@NullMarked
package org.pumpwright.host.signal;

import org.jspecify.annotations.NullMarked;
