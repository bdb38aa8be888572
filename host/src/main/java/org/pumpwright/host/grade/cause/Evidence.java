package org.pumpwright.host.grade.cause;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Everything that one run tells about causes, by key. A reading at a set point has the key {@code flow@30}, one of a step
 * {@code dead-head/pressure, outlet closed}. What was not measured is not there. Thread-safe.
 *
 * @param observations by key, in the order of the keys
 * @param againstCurve whether flow and amps are ratios to those of a healthy curve
 */
public record Evidence(SortedMap<String, Observation> observations, boolean againstCurve) {
    public Evidence {
        observations = Collections.unmodifiableSortedMap(new TreeMap<>(observations));
    }

    /** What a run tells. */
    public static Evidence of(CauseInput input) {
        TreeMap<String, Observation> all = new TreeMap<>();
        new SweepEvidence(input).into(all);
        input.findings().forEach(finding -> FindingEvidence.into(all, finding));
        return new Evidence(all, input.curve().isPresent());
    }

    /** What would be known had only these keys been measured. */
    public Evidence only(Predicate<String> keys) {
        TreeMap<String, Observation> some = new TreeMap<>(observations);
        some.keySet().removeIf(keys.negate());
        return new Evidence(some, againstCurve);
    }
}
