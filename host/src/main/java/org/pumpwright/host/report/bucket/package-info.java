/**
 * Papers of a bucket test: the calibration report as HTML and as text from the same blocks, the label, and the digital certificate.
 * Begin at {@code ReportContent}. Everything on them comes from the record alone. Uses record and what report shares.
 */
@NullMarked
package org.pumpwright.host.report.bucket;

import org.jspecify.annotations.NullMarked;
