package org.pumpwright.host.record.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.record.ledger.Entry;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What an amendment says. Thread-safe.
 *
 * @param by who corrected; blank where the entry names nobody
 * @param reason why
 * @param corrections what, by name
 */
public record AmendmentContent(String by, String reason, List<Correction> corrections) {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    public AmendmentContent {
        corrections = List.copyOf(corrections);
    }

    /**
     * One thing that was corrected.
     *
     * @param what {@code serial}, {@code technician} or {@code claim}
     * @param was what stood there; empty where nothing stood there or it was not noted
     * @param is what is right
     */
    public record Correction(String what, Optional<String> was, String is) {}

    /**
     * Reads an amendment.
     *
     * @throws IllegalArgumentException when the entry amends nothing, or can't be read
     */
    public static AmendmentContent of(Entry entry) {
        String reason = entry.amends()
                .orElseThrow(() -> new IllegalArgumentException("entry %s amends nothing".formatted(entry.id())))
                .reason();
        try {
            JsonNode content = JSON.readTree(entry.content());
            List<Correction> corrections = new ArrayList<>();
            content.path("corrections")
                    .properties()
                    .forEach(each -> corrections.add(correction(each.getKey(), each.getValue())));
            return new AmendmentContent(content.path("by").stringValue(""), reason, corrections);
        } catch (JacksonException e) {
            throw new IllegalArgumentException("entry %s is no JSON".formatted(entry.id()), e);
        }
    }

    private static Correction correction(String what, JsonNode said) {
        return new Correction(
                what,
                Optional.of(said.path("was").stringValue("")).filter(was -> !was.isEmpty()),
                said.path("is").stringValue(""));
    }
}
