package org.pumpwright.host.ui.work;

/**
 * One named tick of a strip. Thread-safe.
 *
 * @param name what is looked at
 * @param mark how it stands
 * @param state how it stands in a word or a figure
 */
public record Tick(Word name, Mark mark, Word state) {}
