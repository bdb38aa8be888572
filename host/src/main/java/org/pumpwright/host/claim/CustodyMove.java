package org.pumpwright.host.claim;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A unit went from one place or state to the next. Thread-safe.
 *
 * @param at when
 * @param to in which state it is now
 * @param person in whose hands
 * @param place where
 * @param tag number of the tag on it; empty when it is the one of the intake
 * @param colour colour of that tag; empty when none was told
 */
public record CustodyMove(
        OffsetDateTime at, CustodyState to, String person, String place, String tag, Optional<String> colour) {
    public CustodyMove {
        at = Words.second(at);
        person = Words.given("person", person);
        place = Words.given("place", place);
        tag = Words.bounded("tag", tag);
    }
}
