package org.pumpwright.host.ui.work;

/**
 * One line of a list of findings. Thread-safe.
 *
 * @param name what was looked at
 * @param mark how it came out
 * @param finding what was found
 * @param remedy what to do; {@link Word#NONE} when nothing
 */
public record Row(Word name, Mark mark, Word finding, Word remedy) {}
