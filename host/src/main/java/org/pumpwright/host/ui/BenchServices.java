package org.pumpwright.host.ui;

import java.nio.file.Path;
import java.time.Clock;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.app.record.RecordBook;

/**
 * What the window is given by its surroundings. Thread-safe.
 *
 * @param home folder of the program, with its data files
 * @param shelf the shop's data files
 * @param stands reaches stands
 * @param records where records are kept
 * @param recordFolder keeps them
 * @param book what the shop has on record; closed with the window
 * @param clock the shop's time and zone
 */
public record BenchServices(
        Path home, Shelf shelf, Stands stands, Path records, RecordFolder recordFolder, RecordBook book, Clock clock) {}
