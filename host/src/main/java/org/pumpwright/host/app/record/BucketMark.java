package org.pumpwright.host.app.record;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What the mark of a bucket test says. Thread-safe.
 *
 * @param chain the chain it belongs to
 * @param file its record
 */
record BucketMark(String chain, Path file) {
    private static final String WORD = "bucket-test";

    String text() {
        return WORD + "\n" + chain + "\n" + file.toAbsolutePath() + "\n";
    }

    /** Empty when it marks something else. */
    static Optional<BucketMark> read(String text) {
        List<String> lines = text.lines().toList();
        return lines.size() == 3 && lines.get(0).equals(WORD)
                ? Optional.of(new BucketMark(lines.get(1), Path.of(lines.get(2))))
                : Optional.empty();
    }
}
