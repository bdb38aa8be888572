package org.pumpwright.host.ui;

import java.nio.file.Path;
import java.time.Clock;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;

/**
 * What the window is given by its surroundings. Thread-safe.
 *
 * @param home folder of the program, with its data files
 * @param shelf the shop's data files
 * @param stands reaches stands
 * @param records where records are kept
 * @param recordFolder keeps them
 * @param clock the shop's time and zone
 */
public record BenchServices(
        Path home, Shelf shelf, Stands stands, Path records, RecordFolder recordFolder, Clock clock) {}
