package org.pumpwright.host.stand.conform;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.Limits;
import org.pumpwright.protocol.Refuse;
import org.pumpwright.protocol.Sample;

/** Messages in the words of the specification, as evidence. Thread-safe. */
final class Say {
    private static final int MOST_TOLD = 5;

    private Say() {}

    static String of(BoardMessage message) {
        if (message instanceof Refuse refuse) {
            return "refuse (%s, detail %d)".formatted(of(refuse.reason()), refuse.detail());
        }
        if (message instanceof Acknowledge) {
            return "acknowledge";
        }
        if (message instanceof Event event) {
            return "event %d '%s: %s', detail %d"
                    .formatted(event.number(), of(event.kind()), of(event.reason()), event.detail());
        }
        if (message instanceof Sample sample) {
            return "sample with state %s, drive 0 at %d"
                    .formatted(of(sample.state()), sample.applied().get(0));
        }
        if (message instanceof Identity identity) {
            return "identity of %s %s, boot id %08x".formatted(identity.kind(), identity.firmware(), identity.bootId());
        }
        if (message instanceof Limits limits) {
            return "limits " + limits.values();
        }
        return Command.name(message.type());
    }

    /** Several messages; a stream of equal kinds is told once. */
    static String of(List<Heard> heard) {
        if (heard.isEmpty()) {
            return "nothing came";
        }
        return heard.stream()
                .map(each -> each.message() instanceof Sample ? "samples" : of(each.message()))
                .distinct()
                .limit(MOST_TOLD)
                .collect(Collectors.joining(", then ", "came: ", ""));
    }

    static String of(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
