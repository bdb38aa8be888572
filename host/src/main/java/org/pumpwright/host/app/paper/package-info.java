/**
 * Papers of what is on record: finds a run or a bucket test, gathers what belongs on a page, and makes the page with the signed
 * record in it. May use the record, the desk and the pages; knows no command line.
 */
@NullMarked
package org.pumpwright.host.app.paper;

import org.jspecify.annotations.NullMarked;
