package org.pumpwright.host.claim;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Where a unit is on its way through the shop. The text's key is {@code claim.custody.WORD}. Common practice, no source.
 * Thread-safe.
 */
public enum CustodyState {
    RECEIVED,
    QUARANTINED,
    TESTED,
    AWAITING_DECISION,
    RETURNED,
    SCRAPPED,
    TO_FACTORY;

    /** From where a unit may go where. Out of the shop there is no way back: what comes again is a new claim. */
    private static final Map<CustodyState, Set<CustodyState>> MOVES = moves();

    private static Map<CustodyState, Set<CustodyState>> moves() {
        Map<CustodyState, Set<CustodyState>> moves = new EnumMap<>(CustodyState.class);
        moves.put(RECEIVED, EnumSet.of(QUARANTINED, TESTED, RETURNED));
        moves.put(QUARANTINED, EnumSet.of(TESTED, AWAITING_DECISION, RETURNED));
        moves.put(TESTED, EnumSet.of(QUARANTINED, AWAITING_DECISION));
        moves.put(AWAITING_DECISION, EnumSet.of(QUARANTINED, TESTED, RETURNED, SCRAPPED, TO_FACTORY));
        moves.put(RETURNED, EnumSet.noneOf(CustodyState.class));
        moves.put(SCRAPPED, EnumSet.noneOf(CustodyState.class));
        moves.put(TO_FACTORY, EnumSet.of(RETURNED, SCRAPPED));
        return moves;
    }

    /** Where a unit may go from here, in the order of the work. */
    public List<CustodyState> next() {
        return Arrays.stream(values())
                .filter(state -> MOVES.getOrDefault(this, Set.of()).contains(state))
                .toList();
    }

    /** Whether the unit has left the shop for good. */
    public boolean isOut() {
        return this == RETURNED || this == SCRAPPED;
    }

    /** Whether a unit may only go here once something was decided. */
    public boolean needsDecision() {
        return this == SCRAPPED || this == TO_FACTORY;
    }

    /** The word in files and on the command line. */
    public String word() {
        return Words.of(this);
    }

    /** Key of its text. */
    public String key() {
        return "claim.custody." + word();
    }

    /** Where a unit may go from here, in words. */
    public String nextWords() {
        return next().isEmpty()
                ? "nothing: what comes again is a new claim"
                : next().stream().map(CustodyState::word).collect(Collectors.joining(", "));
    }

    /**
     * The state with this word.
     *
     * @throws IllegalArgumentException naming the words that are known
     */
    public static CustodyState ofWord(String word) {
        return Words.choice(CustodyState.class, "state", word);
    }
}
