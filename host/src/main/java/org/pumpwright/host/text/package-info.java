/**
 * What the program says, in each of its languages, from one file: {@code texts.yaml}. May use {@code datafile}.
 */
@NullMarked
package org.pumpwright.host.text;

import org.jspecify.annotations.NullMarked;
