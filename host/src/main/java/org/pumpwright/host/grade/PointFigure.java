package org.pumpwright.host.grade;

import java.util.List;
import org.pumpwright.host.quantity.Uncertain;

/**
 * One quantity of one point, in SI units. Thread-safe.
 *
 * @param raw as read, with one K for the meter
 * @param corrections what it was corrected by, or would be
 * @param measured the corrected value
 * @param budget what its uncertainty is made of
 * @param outOfRange why it may only be shown for information; empty where it may be judged
 */
record PointFigure(
        double raw, List<Correction> corrections, Uncertain measured, List<BudgetTerm> budget, String outOfRange) {
    PointFigure {
        corrections = List.copyOf(corrections);
        budget = List.copyOf(budget);
    }
}
