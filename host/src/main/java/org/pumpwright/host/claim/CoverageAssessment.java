package org.pumpwright.host.claim;

import java.util.List;

/**
 * What the coverage rules say of a claim, rule by rule. It decides nothing: a person does. Thread-safe.
 *
 * @param rules name, version and file of the rules
 * @param lines one for each rule, in the order of the file
 */
public record CoverageAssessment(String rules, List<Line> lines) {
    public CoverageAssessment {
        lines = List.copyOf(lines);
    }

    /** Whether a rule holds. The text's key is {@code claim.holds.WORD}. */
    public enum Holds {
        YES,
        NO,
        UNKNOWN;

        /** Key of its text. */
        public String key() {
            return "claim.holds." + Words.of(this);
        }
    }

    /**
     * One rule.
     *
     * @param rule its word; the text's key is {@code claim.rule.WORD}
     * @param holds whether it holds
     * @param because why, with the values that it rests on
     * @param where file and line of the rule
     */
    public record Line(String rule, Holds holds, Sentence because, String where) {}
}
