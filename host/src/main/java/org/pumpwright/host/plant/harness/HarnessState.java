package org.pumpwright.host.plant.harness;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.pumpwright.host.plant.Range;

/**
 * Current and voltages of the harness with a resistor at its far end. Thread-safe.
 *
 * @param amps current from the battery
 * @param voltsAtPoints volts against battery minus at each of {@link HarnessParameters#points()}
 */
public record HarnessState(double amps, List<Double> voltsAtPoints) {

    /** Volts at which the load bank takes its nominal current. */
    static final double LOAD_NOMINAL_VOLTS = 13.6;

    static final double OPEN_OHMS = 1e12;
    private static final double SHORT_OHMS = 0.05;
    private static final double AMPS_ACCURACY = 1e-13;
    private static final int MOST_EVALUATIONS = 200;

    /** Copies the list. */
    public HarnessState {
        voltsAtPoints = List.copyOf(voltsAtPoints);
    }

    /**
     * Everything warmed through at this load.
     *
     * @param nominalAmps what the load bank would take at 13.6 V; 0 is no load
     */
    public static HarnessState of(HarnessParameters p, double nominalAmps) {
        return ofOhms(p, loadOhms(nominalAmps));
    }

    /** Everything warmed through with a resistor at the far end. */
    public static HarnessState ofOhms(HarnessParameters p, double loadOhms) {
        Range.check("load", loadOhms, 1e-3, OPEN_OHMS, "ohm");
        double ends = endOhms(p, loadOhms);
        return at(p, ends, root(p, ends, Double.NaN), Double.NaN);
    }

    /** At a load, with the joints as warm as a mean square current has made them. */
    static HarnessState warmedBy(HarnessParameters p, double nominalAmps, double heatedBy) {
        double ends = endOhms(p, loadOhms(nominalAmps));
        return at(p, ends, root(p, ends, heatedBy), heatedBy);
    }

    /** The chafed wire touches the frame in front of the pump's plug: the frame carries it all, the load nothing. */
    static HarnessState shorted(HarnessParameters p, double heatedBy) {
        HarnessParameters byFrame = p.withSides(p.supplySide(), List.of());
        double amps = root(byFrame, SHORT_OHMS, heatedBy);
        List<Double> volts =
                new ArrayList<>(at(byFrame, SHORT_OHMS, amps, heatedBy).voltsAtPoints());
        volts.set(volts.size() - 1, 0.0);
        p.groundSide().forEach(element -> volts.add(0.0));
        return new HarnessState(amps, volts);
    }

    /** Nothing flows: fuse blown or pin open, both ahead of everything but the battery's terminal. */
    static HarnessState open(HarnessParameters p) {
        List<Double> volts = new ArrayList<>();
        volts.add(p.openCircuitVolts());
        for (int i = 1; i < p.points().size(); i++) {
            volts.add(i == 1 ? p.openCircuitVolts() : 0.0);
        }
        return new HarnessState(0, volts);
    }

    private static double loadOhms(double nominalAmps) {
        Range.check("load", nominalAmps, 0, 100, "A");
        return nominalAmps == 0 ? OPEN_OHMS : LOAD_NOMINAL_VOLTS / nominalAmps;
    }

    private static double endOhms(HarnessParameters p, double loadOhms) {
        return 1 / (1 / loadOhms + 1 / p.leakOhms());
    }

    private static double root(HarnessParameters p, double endOhms, double heatedBy) {
        double most = p.openCircuitVolts() / (p.sourceOhms() + endOhms);
        return new BracketingNthOrderBrentSolver(AMPS_ACCURACY, AMPS_ACCURACY, AMPS_ACCURACY, 5)
                .solve(
                        MOST_EVALUATIONS,
                        amps -> p.openCircuitVolts()
                                - amps * (p.sourceOhms() + endOhms)
                                - drops(p.supplySide(), amps, heatedBy)
                                - drops(p.groundSide(), amps, heatedBy),
                        0,
                        most,
                        AllowedSolution.ANY_SIDE);
    }

    private static double drops(List<Element> side, double amps, double heatedBy) {
        double sum = 0;
        for (Element element : side) {
            sum += element.drop(amps, heat(amps, heatedBy));
        }
        return sum;
    }

    /** Without a history the joints are as warm as this very current makes them. */
    private static double heat(double amps, double heatedBy) {
        return Double.isNaN(heatedBy) ? amps * amps : heatedBy;
    }

    private static HarnessState at(HarnessParameters p, double endOhms, double amps, double heatedBy) {
        List<Double> volts = new ArrayList<>();
        double here = p.openCircuitVolts() - amps * p.sourceOhms();
        volts.add(here);
        for (Element element : p.supplySide()) {
            here -= element.drop(amps, heat(amps, heatedBy));
            volts.add(here);
        }
        here -= amps * endOhms;
        volts.add(here);
        for (Element element : p.groundSide()) {
            here -= element.drop(amps, heat(amps, heatedBy));
            volts.add(here);
        }
        return new HarnessState(amps, volts);
    }
}
