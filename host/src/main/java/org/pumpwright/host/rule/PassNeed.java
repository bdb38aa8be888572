package org.pumpwright.host.rule;

import java.util.List;

/**
 * A complaint that a short sweep cannot speak to: a unit passes only after one of these plans. Thread-safe.
 *
 * @param complaint the complaint's code word
 * @param plans ids of the plans, at least one
 * @param says why, one plain sentence
 * @param source where it stands
 */
public record PassNeed(String complaint, List<String> plans, String says, Source source) {
    public PassNeed {
        plans = List.copyOf(plans);
    }
}
