package org.pumpwright.host.report.bucket;

import java.util.List;
import java.util.Map;

/** One block of a calibration report, before it is drawn as HTML or as text. Thread-safe. */
sealed interface Block {
    /** Names and what they stand for, in their order. */
    record FactList(String title, List<Map.Entry<String, String>> facts) implements Block {
        public FactList {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A table.
     *
     * @param head the columns' names
     * @param rows as many entries as there are columns
     * @param words how many columns from the left hold words, the others figures
     * @param note below it; blank for none
     */
    record Table(String title, List<String> head, List<List<String>> rows, int words, String note) implements Block {
        public Table {
            head = List.copyOf(head);
            rows = List.copyOf(rows);
        }
    }

    /** Sentences, each a paragraph of its own. */
    record Paragraphs(String title, List<String> sentences, boolean boxed) implements Block {
        public Paragraphs {
            sentences = List.copyOf(sentences);
        }
    }

    /** The K-factor, large. */
    record Headline(String k, String uncertainty, String range, String finding, boolean accepted) implements Block {}

    /** K over the flow, drawn; as text it is left out, because the table holds its figures. */
    record Chart() implements Block {}

    /** Lines to sign on. */
    record Blanks(List<String> words) implements Block {
        public Blanks {
            words = List.copyOf(words);
        }
    }
}
