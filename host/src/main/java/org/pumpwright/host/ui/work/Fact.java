package org.pumpwright.host.ui.work;

/**
 * Something that was written down. Thread-safe.
 *
 * @param name what it is
 * @param value what was written; {@link Word#NONE} where nobody has
 */
public record Fact(Word name, Word value) {}
