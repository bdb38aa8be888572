package org.pumpwright.host.record.ledger;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.record.ledger.Draft.Amendment;

/** Writes the header of an entry. Its keys are in canonical order (RFC 8785, 3.2.3). */
final class Header {
    private static final String FORMAT = "pumpwright-entry/1";

    private Header() {}

    static byte[] of(
            String chain,
            long number,
            EntryKind kind,
            String id,
            OffsetDateTime at,
            Digest prior,
            Digest key,
            String content,
            List<Digest> attachments,
            Optional<Amendment> amends,
            Finder finder) {
        JsonText json = new JsonText();
        amends.ifPresent(a -> json.text("amends", a.id()).text("amends_because", a.reason()));
        return json.text("at", at.toString())
                .texts(
                        "attachments_sha256",
                        attachments.stream().map(Digest::hex).toList())
                .text("chain", chain)
                .text("content_sha256", sha256(content))
                // Its own digest, so that an export may leave out whose unit it was.
                .text("finder_sha256", sha256(finder.json()))
                .text("format", FORMAT)
                .text("id", id)
                // Signed with it, so that nobody can put another key in its place.
                .text("key_sha256", key.hex())
                .text("kind", kind.word())
                // As a text: a number above 2^53 would not be exact in every reader.
                .text("number", Long.toString(number))
                .text("prior_sha256", prior.hex())
                .end()
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String sha256(String text) {
        return Digest.of(text.getBytes(StandardCharsets.UTF_8)).hex();
    }
}
