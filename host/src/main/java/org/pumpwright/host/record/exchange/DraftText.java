package org.pumpwright.host.record.exchange;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.Draft.Amendment;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Finder;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A draft as a text, with the chain it is for, while it waits to be entered.
 *
 * @param chain the chain
 * @param draft what is to be put on record
 */
public record DraftText(String chain, Draft draft) {
    private static final String FORMAT = "pumpwright-draft/1";
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** The text. */
    public String text() {
        ObjectNode node = JSON.createObjectNode()
                .put("format", FORMAT)
                .put("chain", chain)
                .put("kind", draft.kind().word())
                .put("id", draft.id())
                .put("at", draft.at().toString())
                .put("content", draft.content())
                .put("finder", draft.finder().json());
        draft.amends().ifPresent(amends -> node.put("amends", amends.id()).put("amends_because", amends.reason()));
        ArrayNode attachments = node.putArray("attachments");
        draft.attachments().forEach(bytes -> attachments.add(Base64.getEncoder().encodeToString(bytes)));
        return JSON.writeValueAsString(node);
    }

    /**
     * Reads what {@link #text} wrote.
     *
     * @throws IllegalArgumentException when it is no such text
     */
    public static DraftText read(String text) {
        try {
            JsonNode node = JSON.readTree(text);
            if (!node.path("format").stringValue("").equals(FORMAT)) {
                throw new IllegalArgumentException("it is no draft of an entry (format %s)".formatted(FORMAT));
            }
            return new DraftText(text(node, "chain"), draft(node));
        } catch (JacksonException | DateTimeException e) {
            throw new IllegalArgumentException("it is no draft of an entry: " + e.getMessage(), e);
        }
    }

    private static Draft draft(JsonNode node) {
        List<byte[]> attachments = new ArrayList<>();
        node.path("attachments")
                .forEach(each -> attachments.add(Base64.getDecoder().decode(each.stringValue(""))));
        String word = text(node, "kind");
        return new Draft(
                EntryKind.ofWord(word)
                        .orElseThrow(
                                () -> new IllegalArgumentException("there is no kind of entry '%s'".formatted(word))),
                text(node, "id"),
                OffsetDateTime.parse(text(node, "at")),
                text(node, "content"),
                Finder.ofJson(text(node, "finder")),
                attachments,
                node.has("amends")
                        ? Optional.of(new Amendment(text(node, "amends"), text(node, "amends_because")))
                        : Optional.empty());
    }

    private static String text(JsonNode node, String name) {
        return node.path(name)
                .stringValueOpt()
                .orElseThrow(() -> new IllegalArgumentException("the draft has no " + name));
    }
}
