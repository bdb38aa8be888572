package org.pumpwright.host.claim;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pumpwright.host.grade.Verdict;

/**
 * What the runs of a claim say together. A run that was graded again counts by its newest grade; one that was INVALID or not
 * tested says nothing. Thread-safe.
 *
 * @param telling the runs that say something, oldest first
 */
public record RunsOfAClaim(List<ClaimRun> telling) {
    public RunsOfAClaim {
        telling = List.copyOf(telling);
    }

    /** Of a claim's file. */
    public static RunsOfAClaim of(ClaimFile file) {
        Set<String> judgedAgain =
                file.runs().stream().flatMap(run -> run.regradedFrom().stream()).collect(Collectors.toSet());
        return new RunsOfAClaim(file.runs().stream()
                .filter(run -> !judgedAgain.contains(run.run()))
                .filter(run -> run.verdict() != Verdict.INVALID && run.verdict() != Verdict.NOT_TESTED)
                .toList());
    }

    /** The first run with this verdict. */
    public Optional<ClaimRun> with(Verdict verdict) {
        return telling.stream().filter(run -> run.verdict() == verdict).findFirst();
    }

    /** The last run by each plan. */
    public List<ClaimRun> lastOfEachPlan() {
        Map<String, ClaimRun> last = new LinkedHashMap<>();
        telling.forEach(run -> last.put(run.planName(), run));
        return List.copyOf(last.values());
    }

    /** Whether one of these plans was run and said something. */
    public boolean ranOneOf(Set<String> plans) {
        return telling.stream().anyMatch(run -> plans.contains(run.planName()));
    }

    /** Ids of their entries. */
    public List<String> entries() {
        return telling.stream().map(ClaimRun::entry).toList();
    }

    /** Each by plan and verdict, in words. */
    public String words() {
        return telling.isEmpty()
                ? "none"
                : telling.stream()
                        .map(run -> "%s %s %s".formatted(run.run(), run.plan(), run.verdict()))
                        .collect(Collectors.joining("; "));
    }
}
