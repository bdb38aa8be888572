package org.pumpwright.host.cli;

import java.io.Reader;
import java.nio.file.Path;
import java.time.Clock;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;

/**
 * What the commands are given by their surroundings, so that tests can give them others. Thread-safe.
 *
 * @param home folder of the program, with its data files
 * @param spare where a run is kept when the folder of records does not take it
 * @param clock the shop's time and zone
 * @param stands reaches stands
 * @param typed what is typed
 * @param livePerson whether a person watches the terminal
 */
public record Workshop(Path home, Path spare, Clock clock, Stands stands, Reader typed, boolean livePerson) {
    /** The shop's data files. */
    public Shelf shelf() {
        return new Shelf(home.resolve("fixtures"));
    }

    /** Where records are kept. */
    public Path records() {
        return home.resolve("records");
    }

    Acceptance acceptance(Path records) {
        return new Acceptance(shelf(), stands, recordFolder(records), clock);
    }

    RecordFolder recordFolder(Path records) {
        return new RecordFolder(records, spare);
    }
}
