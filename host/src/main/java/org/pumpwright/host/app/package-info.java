/**
 * What a person can have done: the use cases, and the one place that picks implementations. Uses everything but the faces
 * (cli).
 */
@NullMarked
package org.pumpwright.host.app;

import org.jspecify.annotations.NullMarked;
