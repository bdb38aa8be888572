package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.quantity.UnitSystem;

/**
 * What the window owes to the days before: when it opens, runs that a program before it did not live to keep are kept, and what still
 * waits is put on record. Closes the book with the window. JavaFX thread only.
 */
public final class RunLedger implements AutoCloseable {
    private final Background background;
    private final RecordFolder folder;
    private final RecordBook book;

    /**
     * Nothing is opened yet.
     *
     * @param folder where runs are safe
     * @param book closed with this
     */
    public RunLedger(Background background, RecordFolder folder, RecordBook book) {
        this.background = background;
        this.folder = folder;
        this.book = book;
    }

    /**
     * Keeps what was cut short, and works off what waits.
     *
     * @param units of the papers
     */
    public void catchUp(UnitSystem units) {
        background.run(
                () -> {
                    recovered(folder.recover(units));
                    return Patience.ask(
                            () -> book.workOff(List.of()), book.choice().words());
                },
                this::told);
    }

    private void recovered(RecordFolder.Recovered found) {
        List<String> kept = new ArrayList<>();
        for (RecordFolder.Kept each : found.kept()) {
            kept.add(each.record().toString());
            each.trouble().ifPresent(trouble -> background.trouble(Trouble.named("record", trouble)));
        }
        if (!kept.isEmpty()) {
            background.trouble(Trouble.named("cut_short", String.join("\n", kept)));
        }
        found.troubles().forEach(trouble -> background.trouble(Trouble.named("record", trouble)));
    }

    private void told(RecordBook.Entered entered) {
        if (!entered.troubles().isEmpty()) {
            background.trouble(Trouble.named("store", String.join("\n", entered.troubles())));
        }
    }

    @Override
    public void close() {
        book.close();
    }
}
