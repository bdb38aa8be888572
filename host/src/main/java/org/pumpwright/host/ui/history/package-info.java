/** What is on record: searched, looked at, compared. Uses {@code ui}, {@code ui.control} and its view models in {@code ui.work}. */
@NullMarked
package org.pumpwright.host.ui.history;

import org.jspecify.annotations.NullMarked;
