package org.pumpwright.host.grade;

/**
 * One correction of a feature, kept even when it is 0. Thread-safe.
 *
 * @param name what is corrected for, e.g. {@code volts}
 * @param size of the whole correction in the feature's unit; what it is, or what it would be
 * @param standardUncertainty of the correction, in the feature's unit
 * @param applied false where the size is only told and the value was left alone
 * @param note why, in plain words; may be empty
 */
public record Correction(String name, double size, double standardUncertainty, boolean applied, String note) {}
