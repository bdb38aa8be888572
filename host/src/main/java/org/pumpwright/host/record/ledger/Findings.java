package org.pumpwright.host.record.ledger;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.record.ledger.Audit.Trouble;

/** Notes what an audit finds; after the first thousand of a sort it only counts. Confined to one thread. */
final class Findings {
    private static final int MOST = 1000;

    private final List<Trouble> troubles = new ArrayList<>();
    private final List<Trouble> notices = new ArrayList<>();
    private long troubleCount;
    private long entries;
    private long attachments;

    void trouble(String chain, long number, String id, String says) {
        troubleCount++;
        note(troubles, new Trouble(chain, number, id, says));
    }

    void notice(String chain, long number, String id, String says) {
        note(notices, new Trouble(chain, number, id, says));
    }

    void entryRead() {
        entries++;
    }

    void attachmentRead() {
        attachments++;
    }

    Audit.Result result(List<String> chains) {
        return new Audit.Result(chains, entries, attachments, troubleCount, troubles, notices);
    }

    private static void note(List<Trouble> list, Trouble trouble) {
        if (list.size() < MOST) {
            list.add(trouble);
        }
    }
}
