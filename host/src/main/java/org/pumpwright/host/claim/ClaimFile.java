package org.pumpwright.host.claim;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Everything that is on record of one claim, as it stands after its last entry. Folded from entries, never stored. Thread-safe.
 *
 * @param intake as it holds now
 * @param moves where the unit was, oldest first; the first is the day it came
 * @param photos oldest first
 * @param observations oldest first
 * @param waivers steps that a person went past, oldest first
 * @param runs oldest first, regraded ones too
 * @param findings oldest first; the last one holds
 * @param decisions oldest first; the last one holds
 * @param corrections oldest first
 * @param missing what is lacking, in the order of the form
 * @param flags what a person should look at
 */
public record ClaimFile(
        ClaimIntake intake,
        List<CustodyMove> moves,
        List<Photo> photos,
        List<Observation> observations,
        List<Waiver> waivers,
        List<ClaimRun> runs,
        List<Finding> findings,
        List<CoverageDecision> decisions,
        List<Correction> corrections,
        List<Missing> missing,
        List<Flag> flags) {
    public ClaimFile {
        moves = List.copyOf(moves);
        photos = List.copyOf(photos);
        observations = List.copyOf(observations);
        waivers = List.copyOf(waivers);
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
        decisions = List.copyOf(decisions);
        corrections = List.copyOf(corrections);
        missing = List.copyOf(missing);
        flags = List.copyOf(flags);
        if (moves.isEmpty()) {
            throw new IllegalArgumentException("claim %s does not say when the unit came".formatted(intake.claim()));
        }
    }

    /** The claim's number. */
    public String number() {
        return intake.claim();
    }

    /** Where the unit is now. */
    public CustodyMove whereabouts() {
        return moves.get(moves.size() - 1);
    }

    /** The finding that holds. */
    public Optional<Finding> finding() {
        return last(findings);
    }

    /** The decision that holds. */
    public Optional<CoverageDecision> decision() {
        return last(decisions);
    }

    /** Everybody who has tested the unit or signed a finding on it: none of them may decide. */
    public Set<String> testers() {
        Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        runs.forEach(run -> names.add(run.technician()));
        findings.forEach(finding -> names.add(finding.signer()));
        return names;
    }

    /** The same with what a person should look at. */
    public ClaimFile flagged(List<Flag> found) {
        return new ClaimFile(
                intake, moves, photos, observations, waivers, runs, findings, decisions, corrections, missing, found);
    }

    /** The same without the people, a dash in the place of each: for whom they do not concern. */
    public ClaimFile withoutPeople() {
        return new ClaimFile(
                intake.with(new People("-", "-", "-")),
                moves,
                photos,
                observations,
                waivers,
                runs,
                findings,
                decisions,
                corrections,
                missing,
                flags);
    }

    /** The same with what it lacks. */
    ClaimFile lacking(List<Missing> items) {
        return new ClaimFile(
                intake, moves, photos, observations, waivers, runs, findings, decisions, corrections, items, flags);
    }

    private static <T> Optional<T> last(List<T> all) {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }
}
