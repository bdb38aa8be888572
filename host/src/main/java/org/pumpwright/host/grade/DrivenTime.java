package org.pumpwright.host.grade;

import java.util.List;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/** How long a unit has been driven: what warms its winding. Thread-safe. */
final class DrivenTime {
    private DrivenTime() {}

    /** Seconds that the drive was on before a time of the board. */
    static double seconds(Trace trace, int drive, long beforeNanos) {
        List<Sample> samples = trace.samples();
        double seconds = 0;
        for (int i = 1; i < samples.size() && samples.get(i).boardNanos() <= beforeNanos; i++) {
            if (samples.get(i).applied().get(drive).parts() > 0) {
                seconds += (samples.get(i).boardNanos() - samples.get(i - 1).boardNanos()) / 1e9;
            }
        }
        return seconds;
    }
}
