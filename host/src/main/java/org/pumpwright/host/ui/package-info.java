/**
 * The window: the frame that every screen stands in, what it says, its keys, its cues and the way to STOP. Each moment of the work has a
 * screen in a package of its own below; {@code control} holds controls, {@code work} what screens show as properties. May use {@code app}
 * and everything below it; has no logic of the shop in it.
 */
@NullMarked
package org.pumpwright.host.ui;

import org.jspecify.annotations.NullMarked;
