package org.pumpwright.host.claim.coverage;

/**
 * A value of a rules file and the line it stands on. Thread-safe.
 *
 * @param <T> what kind of value
 * @param value the value
 * @param line from 1
 */
public record At<T>(T value, int line) {}
