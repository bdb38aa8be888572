package org.pumpwright.host.claim;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.record.ledger.Digest;

/**
 * A picture that belongs to a claim; its bytes are kept under their digest. Thread-safe.
 *
 * @param sha256 of its bytes
 * @param bytes how many there are
 * @param format JPEG or PNG
 * @param shows what can be seen on it
 * @param takenAt when it was taken, by the clock named in {@code by}
 * @param by what the time rests on
 * @param fileName the name under which it was handed in
 * @param person who handed it in
 * @param at when it was put on record
 */
public record Photo(
        Digest sha256,
        int bytes,
        Format format,
        Shows shows,
        LocalDateTime takenAt,
        TimeBy by,
        String fileName,
        String person,
        OffsetDateTime at) {
    /** Larger ones are refused: they fill disks and papers for nothing. */
    public static final int MOST_BYTES = 20 << 20;

    public Photo {
        Require.inRange("size of the picture", bytes, 1, MOST_BYTES, "bytes");
        takenAt = takenAt.withNano(0);
        fileName = Words.bounded("name of the file", fileName);
        person = Words.given("person", person);
        at = Words.second(at);
    }

    /** What can be seen. The text's key is {@code claim.photo.WORD}. */
    public enum Shows {
        PLATE,
        CONNECTOR,
        PORTS,
        WHOLE,
        DAMAGE,
        OTHER;

        /** The word in files and on the command line. */
        public String word() {
            return Words.of(this);
        }

        /** Key of its text. */
        public String key() {
            return "claim.photo." + word();
        }

        /**
         * The choice with this word.
         *
         * @throws IllegalArgumentException naming the words that are known
         */
        public static Shows ofWord(String word) {
            return Words.choice(Shows.class, "choice", word);
        }
    }

    /** How the picture is stored. */
    public enum Format {
        JPEG("jpg"),
        PNG("png");

        private final String ending;

        Format(String ending) {
            this.ending = ending;
        }

        /** Ending of the file's name. */
        public String ending() {
            return ending;
        }
    }

    /** What the time of a picture rests on. The text's key is {@code claim.photo_time.WORD}. */
    public enum TimeBy {
        /** The camera wrote it into the picture. */
        CAMERA,
        /** Only the file has a time, which copying may have changed. */
        FILE;

        /** The word in files. */
        public String word() {
            return Words.of(this);
        }

        /** Key of its text. */
        public String key() {
            return "claim.photo_time." + word();
        }
    }
}
