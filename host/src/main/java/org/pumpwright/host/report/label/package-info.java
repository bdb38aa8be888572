/**
 * The label that is tied to a unit when it leaves the stand: verdict, test, serial, colour of the tag, and the same as a
 * square code and as bars. May use report.draw and what the papers of a run share.
 */
@NullMarked
package org.pumpwright.host.report.label;

import org.jspecify.annotations.NullMarked;
