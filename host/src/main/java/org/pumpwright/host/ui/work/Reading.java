package org.pumpwright.host.ui.work;

/**
 * What one channel of the stand reads now. Thread-safe.
 *
 * @param name of the channel
 * @param value with its unit, in the units of the moment
 * @param limits between which the channel can be believed; {@link Word#NONE} where none are known
 * @param mark how its sensor stands
 */
public record Reading(Word name, Word value, Word limits, Mark mark) {}
