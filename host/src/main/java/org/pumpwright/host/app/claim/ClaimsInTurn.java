package org.pumpwright.host.app.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimFold;
import org.pumpwright.host.record.ledger.Entry;

/** Makes files of claims whose entries come one claim after the other, and keeps those of one claim only. Confined to one thread. */
final class ClaimsInTurn {
    private final ClaimFold.Beside beside;
    private final List<ClaimFile> files = new ArrayList<>();
    /** Claims whose numbers differ in the case of letters come mixed. */
    private final Map<String, List<Entry>> alike = new TreeMap<>();

    private String now = "";

    ClaimsInTurn(ClaimFold.Beside beside) {
        this.beside = beside;
    }

    void add(Entry entry) {
        String claim = entry.finder().claim().orElse("");
        String plain = claim.strip().toLowerCase(Locale.ROOT);
        if (!plain.equals(now)) {
            fold();
            now = plain;
        }
        alike.computeIfAbsent(claim, number -> new ArrayList<>()).add(entry);
    }

    /** All of them. */
    List<ClaimFile> end() {
        fold();
        return List.copyOf(files);
    }

    private void fold() {
        for (List<Entry> entries : alike.values()) {
            ClaimFold.of(entries, beside).ifPresent(files::add);
        }
        alike.clear();
    }
}
