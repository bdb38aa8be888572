package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Handling;

/** What the desk knows of a claim, for whoever takes its unit in. Thread-safe. */
final class KnownFacts {
    private static final String KEY = "ui.receive.known.";

    private KnownFacts() {}

    static List<Fact> of(ClaimLookup.Known known) {
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("words", text(known.words())));
        facts.add(fact(
                "complaint",
                known.complaint()
                        .map(each -> new ComplaintChoice(Optional.of(each)).word())
                        .orElse(Word.NONE)));
        facts.add(fact("model", known.title().or(known::model).map(Word::asIs).orElse(Word.NONE)));
        facts.add(fact("serial", known.serial().map(WorkOrder::serialWord).orElse(Word.NONE)));
        facts.add(fact("product", text(known.product())));
        facts.add(fact("clean", clean(known.handling())));
        if (!known.lacking().isEmpty()) {
            List<Object> lacking = new ArrayList<>();
            known.lacking().forEach(key -> lacking.add(Word.of(key)));
            facts.add(fact("lacking", listed(lacking)));
        }
        return facts;
    }

    /** Each keeps its own words in every language. */
    private static Word listed(List<Object> words) {
        Word all = (Word) words.get(0);
        for (Object next : words.subList(1, words.size())) {
            all = Word.of("ui.receive.known.and", all, next);
        }
        return all;
    }

    private static Word clean(Handling handling) {
        if (handling.uncleaned().isPresent()) {
            Decision person = handling.uncleaned().get();
            return Word.of(KEY + "uncleaned", person.by(), person.reason());
        }
        return handling.cleanBy()
                .map(person -> Word.of(KEY + "clean_by", person))
                .orElse(Word.NONE);
    }

    private static Word text(String given) {
        return given.isBlank() ? Word.NONE : Word.asIs(given);
    }

    private static Fact fact(String what, Word value) {
        return new Fact(Word.of(KEY + what), value);
    }
}
