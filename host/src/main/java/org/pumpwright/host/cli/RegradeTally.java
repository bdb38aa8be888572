package org.pumpwright.host.cli;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Regrading;
import org.pumpwright.host.app.Regrading.Outcome;
import org.pumpwright.host.grade.Verdict;

/** Counts what came of stored runs that were judged again. Confined to the thread that has it done. */
final class RegradeTally {
    /**
     * A verdict and the one in its place.
     *
     * @param from in the old record
     * @param to in the new one
     */
    record Change(Verdict from, Verdict to) {}

    private final Map<Change, Integer> changes =
            new TreeMap<>(Comparator.comparing(Change::from).thenComparing(Change::to));
    private int files;
    private int judged;
    private int notJudged;
    private int passedOver;
    private int ofTheCurvesOwn;
    private int troubles;
    private @Nullable Verdict last;

    /** A listener that counts and then tells another one. */
    Regrading.Listener before(Regrading.Listener next) {
        return new Regrading.Listener() {
            @Override
            public void begins(int found) {
                files = found;
                next.begins(found);
            }

            @Override
            public void done(Outcome outcome) {
                count(outcome);
                next.done(outcome);
            }
        };
    }

    private void count(Outcome outcome) {
        if (outcome instanceof Outcome.Judged done) {
            judged++;
            last = done.record().grade().verdict();
            ofTheCurvesOwn += done.ofTheCurvesOwn() ? 1 : 0;
            troubles += done.kept().flatMap(kept -> kept.trouble()).isPresent() ? 1 : 0;
            if (done.changed()) {
                changes.merge(new Change(done.before(), last), 1, Integer::sum);
            }
        } else if (outcome instanceof Outcome.NotJudged) {
            notJudged++;
        } else {
            passedOver++;
        }
    }

    /** How many files there are. */
    int files() {
        return files;
    }

    /** How many runs were judged. */
    int judged() {
        return judged;
    }

    /** How many could not be. */
    int notJudged() {
        return notJudged;
    }

    /** How many had nothing to be judged. */
    int passedOver() {
        return passedOver;
    }

    /** How many of the judged runs are ones that their curve was made from. */
    int ofTheCurvesOwn() {
        return ofTheCurvesOwn;
    }

    /** How many have a record but not all of their papers. */
    int troubles() {
        return troubles;
    }

    /** How many have another verdict than before. */
    int changed() {
        return changes.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** How many changed, by what they changed from and to. */
    Map<Change, Integer> changes() {
        return changes;
    }

    /** The verdict where one run was judged. */
    Optional<Verdict> onlyVerdict() {
        return judged == 1 ? Optional.ofNullable(last) : Optional.empty();
    }
}
