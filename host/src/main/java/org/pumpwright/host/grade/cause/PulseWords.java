package org.pumpwright.host.grade.cause;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.pumpwright.host.signal.PulseFault;

/** What the words for a meter's pulses tell: of each known trouble, whether it is among those that fit. Thread-safe. */
final class PulseWords {
    private PulseWords() {}

    static void into(Map<String, Observation> all, String words) {
        List<String> named = List.of(words.split(" or ", -1));
        boolean classified =
                Arrays.stream(PulseFault.values()).map(PulseFault::words).anyMatch(named::contains);
        if (!classified) {
            return;
        }
        for (PulseFault fault : PulseFault.values()) {
            if (fault != PulseFault.HEALTHY) {
                all.put("pulses/" + fault.words(), new Observation(named.contains(fault.words()) ? 1 : 0, 0));
            }
        }
    }
}
