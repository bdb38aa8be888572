package org.pumpwright.host.claim;

/**
 * A value and what it rests on. Thread-safe.
 *
 * @param <T> what kind of value
 * @param value the value
 * @param source who says so
 */
public record Sourced<T>(T value, Source source) {}
