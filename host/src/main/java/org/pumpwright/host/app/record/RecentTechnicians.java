package org.pumpwright.host.app.record;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.StoreException;

/** Who tested lately, as the runs on record say. Thread-safe. */
public final class RecentTechnicians {
    private static final int LOOKED_AT = 60;

    /** What stands in a record where nobody was named, and the name of whoever practises. */
    private static final Set<String> NOBODY = Set.of("", "not given", "practice");

    private final RecordBook book;

    /** @param book is only read */
    public RecentTechnicians(RecordBook book) {
        this.book = book;
    }

    /**
     * Their names, who tested last first; none where there is no store yet.
     *
     * @param most how many at most
     * @throws StoreException when they can't be looked up
     */
    public List<String> names(int most) throws StoreException {
        if (!book.choice().mayHold()) {
            return List.of();
        }
        Set<String> names = new LinkedHashSet<>();
        for (Entry run : book.reading().search(Search.newest(LOOKED_AT).ofKind(EntryKind.RUN))) {
            String name = RunContent.technician(run.content());
            if (!NOBODY.contains(name)) {
                names.add(name);
            }
        }
        return new ArrayList<>(names).subList(0, Math.min(most, names.size()));
    }
}
