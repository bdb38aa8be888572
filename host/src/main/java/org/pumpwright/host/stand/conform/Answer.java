package org.pumpwright.host.stand.conform;

import java.util.Optional;
import org.pumpwright.protocol.BoardMessage;

/**
 * What came back for a command. Thread-safe.
 *
 * @param asked the command in words
 * @param message the answer; empty when none came in three tries
 */
record Answer(String asked, Optional<BoardMessage> message) {
    /** The answer in words, as evidence. */
    String words() {
        return asked + ": " + message.map(Say::of).orElse("no answer in three tries");
    }
}
