package org.pumpwright.host.calibrate;

import java.util.List;
import org.pumpwright.host.quantity.FlowRate;

/** K as it goes with the flow. Thread-safe. */
public sealed interface KOverFlow permits FittedK, TableK {
    /** K at a flow, with its uncertainty. */
    Stated at(FlowRate flow);

    /** Mean of K over several flows, each with a weight, with its uncertainty. */
    Stated mean(List<WorkingFlow> flows);

    /** What it is, for a paper. */
    String words();
}
