/**
 * Papers as PDF/A-3b: turns a page of this program's own HTML into the bytes of a document with every font inside it and the
 * record it was made from attached. May use report.draw and the PDF libraries, which nothing else knows. No class of theirs
 * is loaded before the first document is made.
 */
@NullMarked
package org.pumpwright.host.report.pdf;

import org.jspecify.annotations.NullMarked;
