/** The warranty desk: claims taken in, looked at, decided, packed up. Uses {@code ui}, {@code ui.control} and its view models in {@code ui.work}. */
@NullMarked
package org.pumpwright.host.ui.claim;

import org.jspecify.annotations.NullMarked;
