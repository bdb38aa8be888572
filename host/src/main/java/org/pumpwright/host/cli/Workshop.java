package org.pumpwright.host.cli;

import java.io.Reader;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.ClaimGate;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.app.claim.ClaimData;
import org.pumpwright.host.app.claim.ClaimDesk;
import org.pumpwright.host.app.claim.ClaimShelf;
import org.pumpwright.host.app.claim.DeskGate;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.app.record.StoreChoice;
import org.pumpwright.host.record.ledger.RecordStore;

/**
 * What the commands are given by their surroundings, so that tests can give them others. Thread-safe.
 *
 * @param home folder of the program, with its data files
 * @param spare where a run is kept when the folder of records does not take it
 * @param clock the shop's time and zone
 * @param stands reaches stands
 * @param typed what is typed
 * @param livePerson whether a person watches the terminal
 * @param environment variables of the program's environment
 */
public record Workshop(
        Path home,
        Path spare,
        Clock clock,
        Stands stands,
        Reader typed,
        boolean livePerson,
        Map<String, String> environment) {
    private static final String RECORDS_VARIABLE = "PUMPWRIGHT_RECORDS";

    public Workshop {
        environment = Map.copyOf(environment);
    }

    /** The shop's data files. */
    public Shelf shelf() {
        return new Shelf(home.resolve("fixtures"));
    }

    /** Where records are kept: beside the program, unless the environment names another folder. */
    public Path records() {
        return Optional.ofNullable(environment.get(RECORDS_VARIABLE))
                .map(Path::of)
                .orElse(home.resolve("records"));
    }

    Acceptance acceptance(Path records) {
        return new Acceptance(shelf(), stands, recordFolder(records), clock);
    }

    RecordFolder recordFolder(Path records) {
        return new RecordFolder(records, spare).marking();
    }

    /**
     * What the shop has on record, still closed.
     *
     * @param records folder of records
     * @param server address of a database that was asked for; empty for the environment's, or the file in the folder
     * @throws OrderException when that is no address
     */
    public RecordBook recordBook(Path records, Optional<String> server) throws OrderException {
        try {
            return new RecordBook(StoreChoice.of(server, environment, records, home), records, spare);
        } catch (IllegalArgumentException e) {
            throw new OrderException(String.valueOf(e.getMessage()));
        }
    }

    /** Who is asked before a unit is tested for a claim. */
    ClaimGate claimGate(RecordBook book) {
        return new DeskGate(
                () -> {
                    RecordStore store = book.store(book.choice().desk());
                    return new DeskGate.Opened(new ClaimDesk(store, clock), new ClaimShelf(store));
                },
                new ClaimData(home.resolve("fixtures")));
    }
}
