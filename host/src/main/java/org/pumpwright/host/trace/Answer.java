package org.pumpwright.host.trace;

/**
 * What a person answered during a run. Thread-safe.
 *
 * @param step the plan's step
 * @param question as it was put
 * @param word the answer
 * @param boardNanos the board's time of the latest sample before it
 */
public record Answer(String step, String question, String word, long boardNanos) {}
