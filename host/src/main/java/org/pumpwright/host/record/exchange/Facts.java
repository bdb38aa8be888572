package org.pumpwright.host.record.exchange;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.record.ledger.CanonicalJson;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Facts by their names, as the content of an entry. Confined to one thread. */
public final class Facts {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final ObjectNode node = JSON.createObjectNode();

    /** Adds a text. */
    public Facts with(String name, String text) {
        node.put(name, text);
        return this;
    }

    /** Adds a text that may not be there. */
    public Facts with(String name, Optional<String> text) {
        text.ifPresent(present -> node.put(name, present));
        return this;
    }

    /** Adds a whole number; up to 2^53 it is exact everywhere. */
    public Facts with(String name, long number) {
        node.put(name, number);
        return this;
    }

    /** Adds a number. */
    public Facts with(String name, double number) {
        node.put(name, number);
        return this;
    }

    /** Adds a yes or no. */
    public Facts with(String name, boolean flag) {
        node.put(name, flag);
        return this;
    }

    /** Adds texts in their order. */
    public Facts with(String name, List<String> texts) {
        ArrayNode list = node.putArray(name);
        texts.forEach(list::add);
        return this;
    }

    /** Adds facts of their own. */
    public Facts with(String name, Facts facts) {
        node.set(name, facts.node);
        return this;
    }

    /** Canonical JSON (RFC 8785). */
    public String json() {
        return new String(CanonicalJson.of(JSON.writeValueAsString(node)), StandardCharsets.UTF_8);
    }
}
