/** The bucket test of a flow meter, guided. Uses {@code ui}, {@code ui.control} and its view models in {@code ui.work}. */
@NullMarked
package org.pumpwright.host.ui.bucket;

import org.jspecify.annotations.NullMarked;
