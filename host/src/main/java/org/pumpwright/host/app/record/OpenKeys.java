package org.pumpwright.host.app.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.pumpwright.host.record.ledger.CheckingKey;
import org.pumpwright.host.record.ledger.KeyFile;

/** Open keys from their PEM texts. Thread-safe. */
final class OpenKeys {
    private OpenKeys() {}

    /**
     * The keys by their names.
     *
     * @throws IOException when one is no key
     */
    static Map<String, CheckingKey> of(Map<String, String> texts) throws IOException {
        Map<String, CheckingKey> keys = new TreeMap<>();
        for (Map.Entry<String, String> text : texts.entrySet()) {
            Path file = Files.createTempFile("open-key", ".pub");
            try {
                Files.writeString(file, text.getValue(), StandardCharsets.US_ASCII);
                keys.put(text.getKey(), KeyFile.readOpen(file));
            } finally {
                Files.deleteIfExists(file);
            }
        }
        return keys;
    }
}
