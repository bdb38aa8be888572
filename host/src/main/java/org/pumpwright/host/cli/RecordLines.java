package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.record.ledger.Entry;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Tells what the record has to say while a unit is tested: visits before, and what is not on record yet. Confined to one thread. */
public final class RecordLines {
    private static final int SHOWN = 5;
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final PrintWriter out;
    private final boolean json;

    /**
     * Tells it.
     *
     * @param json whether as JSON, one object a line
     */
    public RecordLines(PrintWriter out, boolean json) {
        this.out = out;
        this.json = json;
    }

    /** What to read before a unit is tested. */
    void warnings(List<String> warnings) {
        for (String warning : warnings) {
            if (json) {
                print(event("claim").put("warning", warning));
            } else {
                out.println(WrappedText.of("! " + warning, 2));
            }
        }
    }

    /** That the unit was here before, the newest visit first; nothing when it was not. */
    void visits(String serial, List<Entry> visits) {
        if (visits.isEmpty()) {
            return;
        }
        if (json) {
            ObjectNode node = event("visits").put("serial", serial).put("count", visits.size());
            ArrayNode list = node.putArray("visits");
            visits.forEach(visit -> list.add(JSON.createObjectNode()
                    .put("id", visit.id())
                    .put("kind", visit.kind().word())
                    .put("at", visit.at().toString())
                    .put("verdict", visit.finder().verdict().orElse(null))));
            print(node);
            return;
        }
        out.println("This unit was here before (serial %s):".formatted(serial));
        visits.stream().limit(SHOWN).forEach(visit -> out.println("  " + words(visit)));
        if (visits.size() > SHOWN) {
            out.println("  and %d more: pumpwright record find --serial %s".formatted(visits.size() - SHOWN, serial));
        }
        out.println();
    }

    private static String words(Entry visit) {
        return "%s  %-12s %-10s %s"
                .formatted(
                        visit.at().toLocalDate(),
                        visit.finder()
                                .verdict()
                                .orElse(visit.kind().word())
                                .toUpperCase(Locale.ROOT)
                                .replace('-', ' '),
                        visit.finder().model().orElse(""),
                        visit.id());
    }

    /** What is safe and not on record, and what to do; and what was still waiting from before. Nothing when all is well. */
    public void entered(RecordBook.Entered entered) {
        if (json) {
            if (entered.waiting() > 0 || !entered.troubles().isEmpty()) {
                ObjectNode node = event("not_on_record").put("waiting", entered.waiting());
                ArrayNode troubles = node.putArray("troubles");
                entered.troubles().forEach(troubles::add);
                print(node);
            }
            return;
        }
        for (String trouble : entered.troubles()) {
            out.println("CAUTION        Not on record yet: " + trouble);
        }
        if (entered.waiting() > 0) {
            out.println(
                    "               %d waiting, safe in the folder; entered at the next start or by 'pumpwright record enter'."
                            .formatted(entered.waiting()));
        }
    }

    private static ObjectNode event(String name) {
        return JSON.createObjectNode().put("event", name);
    }

    private void print(ObjectNode node) {
        out.println(node);
    }
}
