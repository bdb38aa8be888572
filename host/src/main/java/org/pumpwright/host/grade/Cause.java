package org.pumpwright.host.grade;

/**
 * A likely cause of what was seen. Thread-safe.
 *
 * @param name in plain words
 * @param because the pattern in the figures that points to it
 * @param nextTest the test that would confirm it or split it from its rivals
 */
public record Cause(String name, String because, String nextTest) {}
