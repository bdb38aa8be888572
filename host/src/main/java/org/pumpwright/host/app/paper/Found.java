package org.pumpwright.host.app.paper;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.record.OnRecord;
import org.pumpwright.host.record.BucketContent;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.report.pdf.Attachment;

/** What papers are made of. Thread-safe. */
public sealed interface Found {
    /** Its entry; empty for a file that was given by name. */
    Optional<OnRecord> entry();

    /** Its number, without the stand's name. */
    String id();

    /** What it says as it is hashed: canonical JSON. */
    String content();

    /**
     * A run.
     *
     * @param run as it was first written
     * @param entry where it is on record
     */
    record Run(RunRecord run, Optional<OnRecord> entry) implements Found {
        @Override
        public String id() {
            return run.id();
        }

        @Override
        public String content() {
            return entry.map(there -> there.entry().content()).orElseGet(() -> RunContent.of(run));
        }
    }

    /**
     * A bucket test.
     *
     * @param test as it was first written
     * @param entry where it is on record
     */
    record Bucket(BucketRecord test, Optional<OnRecord> entry) implements Found {
        @Override
        public String id() {
            return test.id();
        }

        @Override
        public String content() {
            return entry.map(there -> there.entry().content()).orElseGet(() -> BucketContent.of(test));
        }
    }

    /** The digest that its entry's signed header gives for the content. */
    default Digest digest() {
        return Digest.of(content().getBytes(StandardCharsets.UTF_8));
    }

    /** What corrects it, oldest first. */
    default List<Entry> amendments() {
        return entry().map(OnRecord::amendments).orElse(List.of());
    }

    /**
     * The record, and where it is on record the signed header with its signature.
     *
     * @param before what their names begin with, to tell two records in one document apart; may be empty
     */
    default List<Attachment> attachments(String before) {
        byte[] record = content().getBytes(StandardCharsets.UTF_8);
        List<Attachment> attachments = new ArrayList<>();
        attachments.add(
                before.isEmpty()
                        ? Attachment.record(record)
                        : new Attachment(before + Attachment.RECORD, record, "The earlier record, as canonical JSON"));
        attachments.addAll(seal(before));
        return attachments;
    }

    /** The signed header with its signature alone, where it is on record. */
    default List<Attachment> seal(String before) {
        return entry().map(OnRecord::entry)
                .map(signed -> List.of(
                        new Attachment(
                                before + "entry.json",
                                signed.header(),
                                "The signed header of the record's entry; content_sha256 in it is the SHA-256 of the record"),
                        new Attachment(
                                before + "entry.sig",
                                HexFormat.of().parseHex(signed.seal().signature()),
                                "The signature over entry.json, Ed25519")))
                .orElse(List.of());
    }
}
