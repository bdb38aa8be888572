package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.List;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.EventsFrom;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.Sample;

/** Events: numbered, told once, and told again when asked for. Thread-safe. */
final class EventChecks {
    private static final int ROUNDS = 3;

    private EventChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("events are told once each, numbered one by one", "4.9", EventChecks::numbered),
                new Check("events are told again from a number on, oldest first", "4.12", EventChecks::again));
    }

    /** Arms and makes safe a few times: two events each. */
    private static List<Event> rounds(Trial trial) throws Broken, NotPossible, StandException {
        int mark = trial.talk().mark();
        for (int i = 0; i < ROUNDS; i++) {
            trial.arm();
            trial.talk().stayAlive(false);
            trial.acknowledged(new MakeSafe());
            trial.talk().listen(Duration.ofMillis(80));
        }
        return trial.all(Event.class, mark);
    }

    private static String numbered(Trial trial) throws Broken, NotPossible, StandException {
        int mark = trial.talk().mark();
        List<Event> events = rounds(trial);
        trial.demand(events.size() == 2 * ROUNDS, "%d events expected; %s", 2 * ROUNDS, trial.events(mark));
        for (int i = 0; i < events.size(); i++) {
            EventKind kind = i % 2 == 0 ? EventKind.ARMED : EventKind.MADE_SAFE;
            trial.demand(events.get(i).kind() == kind, "event '%s' expected; %s", Say.of(kind), Say.of(events.get(i)));
            if (i > 0) {
                Event before = events.get(i - 1);
                trial.demand(
                        events.get(i).number() == Trial.next(before.number()),
                        "event %d follows event %d",
                        events.get(i).number(),
                        before.number());
                trial.demand(
                        trial.signedMillis(before.time(), events.get(i).time()) >= 0,
                        "event %d lies before event %d in the board's time",
                        events.get(i).number(),
                        before.number());
            }
        }
        trial.stream(20);
        int newest = events.get(events.size() - 1).number();
        Sample sample = trial.sample();
        trial.demand(sample.events() == newest, "newest event %d; the sample says %d", newest, sample.events());
        return "%d events, numbers %d to %d"
                .formatted(events.size(), events.get(0).number(), newest);
    }

    private static String again(Trial trial) throws Broken, NotPossible, StandException {
        List<Event> events = rounds(trial);
        trial.demand(events.size() >= 2, "%d events came", events.size());
        List<Event> asked = events.subList(1, events.size());
        int mark = trial.talk().mark();
        trial.acknowledged(new EventsFrom(asked.get(0).number()));
        List<BoardMessage> came =
                trial.talk().since(mark).stream().map(Heard::message).toList();
        trial.demand(
                trial.all(Event.class, mark).equals(asked),
                "events %d to %d as they were expected; %s",
                asked.get(0).number(),
                asked.get(asked.size() - 1).number(),
                trial.events(mark));
        trial.demand(
                came.get(came.size() - 1) instanceof Acknowledge,
                "the acknowledge behind the events expected; %s",
                Say.of(trial.talk().since(mark)));
        int next = Trial.next(asked.get(asked.size() - 1).number());
        mark = trial.talk().mark();
        trial.acknowledged(new EventsFrom(next));
        trial.demand(
                trial.all(Event.class, mark).isEmpty(),
                "no event expected from number %d on; %s",
                next,
                trial.events(mark));
        return "%d events again, unchanged, then the acknowledge; none from number %d on".formatted(asked.size(), next);
    }
}
