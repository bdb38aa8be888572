/**
 * The bucket test as a use case: sheets and CSV files read, a test guided on a stand, runs read from a scale, the result kept with its
 * papers. Begin at {@code BucketCalibration}; {@code BucketGuide} is the way over a stand. Uses calibrate, stand, run, record, report
 * and what app shares.
 */
@NullMarked
package org.pumpwright.host.app.bucket;

import org.jspecify.annotations.NullMarked;
