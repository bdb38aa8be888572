package org.pumpwright.host.claim;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * What a technician finds, in neutral words. It decides nothing about who pays. Thread-safe.
 *
 * @param category the neutral category
 * @param reproduced whether the complaint showed
 * @param basis what it rests on, in the technician's words
 * @param parts the parts concerned, such as {@code diaphragm}; empty when none was named
 * @param tests every run it rests on, by id of its entry; of a symptom that did not show, every test performed
 * @param signer who signs
 * @param at when
 */
public record Finding(
        Category category,
        Reproduced reproduced,
        String basis,
        List<String> parts,
        List<String> tests,
        String signer,
        OffsetDateTime at) {
    public Finding {
        basis = Words.given("basis", basis);
        parts = parts.stream().map(part -> Words.given("part", part)).toList();
        tests = List.copyOf(tests);
        signer = Words.given("signer", signer);
        at = Words.second(at);
    }
}
