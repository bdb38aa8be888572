/**
 * What screens show, as properties, fed from use cases that run on worker threads. No controls in it, so it is tested without a window.
 * May use {@code app} and everything below it.
 */
@NullMarked
package org.pumpwright.host.ui.work;

import org.jspecify.annotations.NullMarked;
