package org.pumpwright.host.report.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;

/** The number that tells a document from others, made of what it holds. Thread-safe. */
final class DocumentNumber {
    private DocumentNumber() {}

    static long of(String html, Sheet sheet, Origin origin, List<Attachment> attachments) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(html.getBytes(StandardCharsets.UTF_8));
            digest.update((sheet + "\n" + origin).getBytes(StandardCharsets.UTF_8));
            attachments.forEach(file -> digest.update(file.bytes()));
            return ByteBuffer.wrap(digest.digest()).getLong();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
