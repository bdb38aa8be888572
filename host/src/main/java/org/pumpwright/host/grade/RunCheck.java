package org.pumpwright.host.grade;

import java.util.List;
import java.util.stream.Collectors;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.Ending;

/** Whether the run came to an end that lets the unit be judged. Thread-safe. */
final class RunCheck {
    private RunCheck() {}

    static StandCheck ending(Ending ending) {
        String finding = ending.completed() ? "every step of the plan was carried out" : ending.reason();
        boolean ok = ending.completed() || ending.kind() == Ending.Kind.UNIT_OUT_OF_BOUNDS;
        return StandChecks.check("end of the run", ok, finding, remedy(ending.kind()));
    }

    private static String remedy(Ending.Kind kind) {
        return switch (kind) {
            case COMPLETED, UNIT_OUT_OF_BOUNDS -> "";
            case PROGRAM_FAULT -> "report this with the record, then run again";
            case STAND_UNFIT -> "put right what ended the run, then run again";
            case STOPPED_BY_BOARD ->
                "clear what the board tells: emergency stop, guard, cable or a busy PC; then run again";
            case STOPPED_BY_PERSON -> "run again to the end";
            case STAND_LOST -> "check the stand's cable and power, then run again";
        };
    }

    /** A run that the unit ended may lack points: that is held against the unit, not the stand. */
    static StandCheck judgedPoints(GradingInput input, List<PointReading> points) {
        List<Duty> missing = input.plan().judged().stream()
                .filter(duty -> points.stream()
                        .noneMatch(p -> p.up() && p.mark().commanded().equals(duty)))
                .toList();
        boolean ok = missing.isEmpty() || input.ending().kind() == Ending.Kind.UNIT_OUT_OF_BOUNDS;
        String list = missing.stream().map(Duty::print).collect(Collectors.joining(", "));
        String finding = missing.isEmpty() ? "every judged point was measured" : "not measured: " + list;
        return StandChecks.check("judged points", ok, finding, "run the whole plan again");
    }
}
