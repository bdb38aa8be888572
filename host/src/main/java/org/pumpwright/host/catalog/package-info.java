/**
 * What is known of the units that come in: models, as data read from files. Uses quantity and datafile.
 */
@NullMarked
package org.pumpwright.host.catalog;

import org.jspecify.annotations.NullMarked;
