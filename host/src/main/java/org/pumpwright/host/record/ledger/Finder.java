package org.pumpwright.host.record.ledger;

import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * By what an entry is looked for. Only a copy of what its content says: it is made again from the content whenever it is in
 * doubt. Thread-safe.
 *
 * @param serial serial number of the unit
 * @param model model of the unit
 * @param customer whose it is
 * @param claim claim or job number
 * @param verdict the verdict, as it is written in files
 * @param words anything else by which a person may remember it
 */
public record Finder(
        Optional<String> serial,
        Optional<String> model,
        Optional<String> customer,
        Optional<String> claim,
        Optional<String> verdict,
        String words) {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** An entry that is looked for by its id and day only. */
    public static final Finder NOTHING =
            new Finder(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "");

    /**
     * Reads what {@link #json} wrote.
     *
     * @throws IllegalArgumentException when it is no such JSON
     */
    public static Finder ofJson(String json) {
        try {
            JsonNode node = JSON.readTree(json);
            return new Finder(
                    node.path("serial").stringValueOpt(),
                    node.path("model").stringValueOpt(),
                    node.path("customer").stringValueOpt(),
                    node.path("claim").stringValueOpt(),
                    node.path("verdict").stringValueOpt(),
                    node.path("words").stringValue(""));
        } catch (JacksonException e) {
            throw new IllegalArgumentException("the search words of an entry are no JSON: " + e.getMessage(), e);
        }
    }

    /** Canonical JSON. */
    public String json() {
        return new JsonText()
                .text("claim", claim)
                .text("customer", customer)
                .text("model", model)
                .text("serial", serial)
                .text("verdict", verdict)
                .text("words", words)
                .end();
    }
}
