package org.pumpwright.host.app.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.record.exchange.DraftText;
import org.pumpwright.host.record.ledger.Draft;

/** Things other than runs that wait in the outbox, each as a whole draft. Thread-safe. */
final class Notes {
    private static final String ENDING = ".note";

    private Notes() {}

    static boolean isNote(String mark) {
        return mark.endsWith(ENDING);
    }

    /** Puts a draft where it waits: in the first folder that takes it. */
    static void put(List<Path> folders, String name, String chain, Draft draft) throws IOException {
        String text = new DraftText(chain, draft).text();
        IOException refused = new IOException("there is no folder");
        for (Path folder : folders) {
            try {
                RecordFolder.outbox(folder).note(name + ENDING, text);
                return;
            } catch (IOException e) {
                refused = e;
            }
        }
        throw refused;
    }
}
