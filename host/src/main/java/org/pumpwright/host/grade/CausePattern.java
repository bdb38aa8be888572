package org.pumpwright.host.grade;

import java.util.List;

/**
 * How one fault shows. Thread-safe.
 *
 * @param id short name
 * @param name in plain words
 * @param pattern the pattern in words
 * @param nextTest the test that would confirm it
 * @param allOrNothing true for a fault that has no lesser degree
 * @param ruledOutByNozzleCheck true for a fault that a sound nozzle check excludes
 * @param severities the changes it makes, from mild to severe
 */
public record CausePattern(
        String id,
        String name,
        String pattern,
        String nextTest,
        boolean allOrNothing,
        boolean ruledOutByNozzleCheck,
        List<Change> severities) {

    /**
     * Changes against a healthy unit at the same effective volts, one figure for each set point of the atlas.
     *
     * @param flowPercent change of flow
     * @param motorAmpsPercent change of motor current
     */
    public record Change(List<Double> flowPercent, List<Double> motorAmpsPercent) {
        public Change {
            flowPercent = List.copyOf(flowPercent);
            motorAmpsPercent = List.copyOf(motorAmpsPercent);
        }

        List<Double> of(Feature.Kind quantity) {
            return switch (quantity) {
                case FLOW -> flowPercent;
                case MOTOR_AMPS -> motorAmpsPercent;
            };
        }
    }

    public CausePattern {
        severities = List.copyOf(severities);
        if (severities.isEmpty()) {
            throw new IllegalArgumentException("cause " + id + " has no severities");
        }
    }

    void requireFigures(int count) {
        for (Change change : severities) {
            if (change.flowPercent().size() != count
                    || change.motorAmpsPercent().size() != count) {
                throw new IllegalArgumentException(
                        "cause %s needs %d figures of flow and of motor amps at each severity".formatted(id, count));
            }
        }
    }
}
