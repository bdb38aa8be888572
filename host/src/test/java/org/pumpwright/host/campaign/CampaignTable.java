package org.pumpwright.host.campaign;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.LongSummaryStatistics;
import java.util.TreeSet;
import org.pumpwright.host.record.RunRecord;

/** What was measured, a row for each fault, as the page in the docs shows it. */
final class CampaignTable {
    private final List<String> rows = new ArrayList<>();
    private int tries;

    void add(Fault fault, List<Seen> seen) {
        tries += seen.size();
        double longest = seen.stream().mapToDouble(Seen::drivenMillis).max().orElse(0);
        rows.add(String.format(
                Locale.ROOT,
                "| %s | %d | %s | %s | %s | %s |",
                fault.sentence(),
                seen.size(),
                fault.bound().mustNotStop() ? "-" : String.format(Locale.ROOT, "%.0f", longest),
                fault.bound().words(),
                lost(seen),
                says(seen)));
    }

    int tries() {
        return tries;
    }

    String text(String about) {
        return about
                + "\n\n| fault | tries | longest drive after it, ms | stated | samples lost | what the record says |\n"
                + "| --- | --- | --- | --- | --- | --- |\n"
                + String.join("\n", rows)
                + "\n";
    }

    private static String lost(List<Seen> seen) {
        LongSummaryStatistics lost = seen.stream()
                .flatMap(one -> one.record().stream())
                .mapToLong(record -> record.stand().samplesLost())
                .summaryStatistics();
        if (lost.getCount() == 0) {
            return "-";
        }
        return lost.getMin() == lost.getMax() ? "" + lost.getMax() : lost.getMin() + " to " + lost.getMax();
    }

    private static String says(List<Seen> seen) {
        Collection<String> words = new TreeSet<>();
        for (Seen one : seen) {
            words.add(one.record().map(CampaignTable::plain).orElse("no record: the host was killed"));
        }
        return String.join("<br>", words);
    }

    private static String plain(RunRecord record) {
        return Judge.says(record)
                .replaceAll("/dev/pts/\\d+", "PORT")
                .replaceAll("-?\\d+\\.\\d+", "N")
                .replace("|", "/");
    }
}
