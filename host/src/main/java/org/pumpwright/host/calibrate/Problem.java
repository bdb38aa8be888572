package org.pumpwright.host.calibrate;

/**
 * Why a test gives no K. Thread-safe.
 *
 * @param field what it is about, in words of a sheet: {@code liquid.density}, {@code run 3 gross}
 * @param sentence for a person: what is wrong, value against limit, what to do
 */
public record Problem(String field, String sentence) {}
