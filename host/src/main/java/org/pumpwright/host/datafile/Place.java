package org.pumpwright.host.datafile;

/**
 * Where a value stands. Thread-safe.
 *
 * @param line of its key, or of the value itself in a list; from 1
 * @param column likewise
 * @param found the value as a person would quote it from the file
 */
record Place(int line, int column, String found) {}
