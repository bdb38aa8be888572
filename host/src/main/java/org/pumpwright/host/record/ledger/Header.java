package org.pumpwright.host.record.ledger;

import java.nio.charset.StandardCharsets;

/** Writes the header of an entry. Its keys are in canonical order (RFC 8785, 3.2.3). */
final class Header {
    private static final String FORMAT = "pumpwright-entry/1";

    private Header() {}

    static byte[] of(Entry entry) {
        JsonText json = new JsonText();
        entry.amends().ifPresent(a -> json.text("amends", a.id()).text("amends_because", a.reason()));
        return json.text("at", entry.at().toString())
                .texts(
                        "attachments_sha256",
                        entry.attachments().stream().map(Digest::hex).toList())
                .text("chain", entry.chain())
                .text("content_sha256", sha256(entry.content()))
                .text("entered_at", entry.entered().toString())
                // Its own digest, so that an export may leave out whose unit it was.
                .text("finder_sha256", sha256(entry.finder().json()))
                .text("format", FORMAT)
                .text("id", entry.id())
                // Signed with it, so that nobody can put another key in its place.
                .text("key_sha256", entry.seal().key().hex())
                .text("kind", entry.kind().word())
                // As a text: a number above 2^53 would not be exact in every reader.
                .text("number", Long.toString(entry.number()))
                .text("prior_sha256", entry.prior().hex())
                .end()
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String sha256(String text) {
        return Digest.of(text.getBytes(StandardCharsets.UTF_8)).hex();
    }
}
