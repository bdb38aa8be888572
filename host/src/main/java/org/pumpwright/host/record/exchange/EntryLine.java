package org.pumpwright.host.record.exchange;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.record.ledger.CheckingKey;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Draft.Amendment;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Finder;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An entry as one line of JSON that proves itself. Its header is given as the very text that was hashed and signed; content and
 * finder are given as the texts whose digests the header holds, so each of them may be left out and the rest still verifies.
 * What is kept beside the entry is hexadecimal, as the digests are; what was left out is null. Thread-safe.
 *
 * @param header as it was signed, canonical JSON
 * @param content as it was hashed; empty where it was left out
 * @param finder by what it is looked for, as it was hashed; empty where it was left out, and with it whose unit it was
 * @param seal by whom it was signed
 * @param attachments in the order of the header's digests; empty where one was left out
 */
public record EntryLine(
        String header,
        Optional<String> content,
        Optional<String> finder,
        Entry.Seal seal,
        List<Optional<byte[]>> attachments) {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    public EntryLine {
        attachments = List.copyOf(attachments);
    }

    /** The line of an entry with everything. */
    public static EntryLine of(Entry entry, List<Optional<byte[]>> attachments) {
        return new EntryLine(
                new String(entry.header(), StandardCharsets.UTF_8),
                Optional.of(entry.content()),
                Optional.of(entry.finder().json()),
                entry.seal(),
                attachments);
    }

    /** The same without its finder. */
    public EntryLine withoutFinder() {
        return new EntryLine(header, content, Optional.empty(), seal, attachments);
    }

    /** The same without its content. */
    public EntryLine withoutContent() {
        return new EntryLine(header, Optional.empty(), finder, seal, attachments);
    }

    /** The same without what is kept beside it. */
    public EntryLine withoutAttachments() {
        return new EntryLine(
                header,
                content,
                finder,
                seal,
                attachments.stream().map(each -> Optional.<byte[]>empty()).toList());
    }

    /** The line. */
    public String text() {
        ObjectNode node = JSON.createObjectNode().put("header", header);
        content.ifPresent(text -> node.put("content", text));
        finder.ifPresent(text -> node.put("finder", text));
        node.put("key_sha256", seal.key().hex()).put("signature", seal.signature());
        ArrayNode list = node.putArray("attachments");
        for (Optional<byte[]> bytes : attachments) {
            list.add(bytes.map(HexFormat.of()::formatHex).orElse(null));
        }
        return JSON.writeValueAsString(node);
    }

    /**
     * Reads a line.
     *
     * @throws IllegalArgumentException when it is no such line
     */
    public static EntryLine read(String line) {
        try {
            JsonNode node = JSON.readTree(line);
            List<Optional<byte[]>> attachments = new ArrayList<>();
            node.path("attachments")
                    .forEach(each -> attachments.add(each.stringValueOpt().map(HexFormat.of()::parseHex)));
            return new EntryLine(
                    text(node, "header"),
                    node.path("content").stringValueOpt(),
                    node.path("finder").stringValueOpt(),
                    new Entry.Seal(new Digest(text(node, "key_sha256")), text(node, "signature")),
                    attachments);
        } catch (JacksonException e) {
            throw new IllegalArgumentException("it is no JSON: " + e.getOriginalMessage(), e);
        }
    }

    /** The chain of the entry and its place there, as the header says. */
    public String place() {
        JsonNode head = head();
        return "entry %s of %s".formatted(text(head, "number"), text(head, "chain"));
    }

    /**
     * What is wrong with the line by itself; empty when all that is there is what was signed.
     *
     * @param key the key that the seal names
     */
    public Optional<String> trouble(CheckingKey key) {
        if (!key.digest().equals(seal.key())) {
            return Optional.of("is signed with another key than the one given");
        }
        if (!key.signed(header.getBytes(StandardCharsets.UTF_8), seal.signature())) {
            return Optional.of("was changed after it was signed");
        }
        JsonNode head = head();
        if (content.filter(text -> !sha256(text).equals(text(head, "content_sha256")))
                .isPresent()) {
            return Optional.of("has another content than was signed");
        }
        if (finder.filter(text -> !sha256(text).equals(text(head, "finder_sha256")))
                .isPresent()) {
            return Optional.of("is found by other words than were signed");
        }
        List<String> digests = digests(head);
        if (digests.size() != attachments.size()) {
            return Optional.of("has %d things beside it, %d were signed".formatted(attachments.size(), digests.size()));
        }
        for (int i = 0; i < digests.size(); i++) {
            String digest = digests.get(i);
            if (attachments
                    .get(i)
                    .filter(bytes -> !Digest.of(bytes).hex().equals(digest))
                    .isPresent()) {
                return Optional.of("has something else beside it than was signed: " + digest);
            }
        }
        return Optional.empty();
    }

    /**
     * The entry, where all of it is in the line.
     *
     * @throws IllegalArgumentException when something was left out, or the header is not that of an entry
     */
    public Entry entry() {
        JsonNode head = head();
        try {
            Entry entry = new Entry(
                    text(head, "chain"),
                    Long.parseLong(text(head, "number")),
                    EntryKind.ofWord(text(head, "kind"))
                            .orElseThrow(() -> new IllegalArgumentException(
                                    "there is no kind of entry '%s'".formatted(text(head, "kind")))),
                    text(head, "id"),
                    OffsetDateTime.parse(text(head, "at")),
                    Instant.parse(text(head, "entered_at")),
                    new Digest(text(head, "prior_sha256")),
                    content.orElseThrow(() -> leftOut("content")),
                    digests(head).stream().map(Digest::new).toList(),
                    head.has("amends")
                            ? Optional.of(new Amendment(text(head, "amends"), text(head, "amends_because")))
                            : Optional.empty(),
                    Finder.ofJson(finder.orElseThrow(() -> leftOut("finder"))),
                    seal);
            if (!Arrays.equals(entry.header(), header.getBytes(StandardCharsets.UTF_8))) {
                throw new IllegalArgumentException("its header is not that of an entry");
            }
            return entry;
        } catch (DateTimeException | NumberFormatException e) {
            throw new IllegalArgumentException("its header is not that of an entry: " + e.getMessage(), e);
        }
    }

    private static IllegalArgumentException leftOut(String what) {
        return new IllegalArgumentException(
                "its %s was left out when it was exported. Export again with --with-customer to take it in elsewhere"
                        .formatted(what));
    }

    private JsonNode head() {
        try {
            return JSON.readTree(header);
        } catch (JacksonException e) {
            throw new IllegalArgumentException("its header is no JSON: " + e.getOriginalMessage(), e);
        }
    }

    private static List<String> digests(JsonNode head) {
        List<String> digests = new ArrayList<>();
        head.path("attachments_sha256").forEach(each -> digests.add(each.stringValue("")));
        return digests;
    }

    private static String sha256(String text) {
        return Digest.of(text.getBytes(StandardCharsets.UTF_8)).hex();
    }

    private static String text(JsonNode node, String name) {
        return node.path(name).stringValueOpt().orElseThrow(() -> new IllegalArgumentException("it has no " + name));
    }
}
