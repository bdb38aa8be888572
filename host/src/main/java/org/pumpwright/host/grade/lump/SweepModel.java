package org.pumpwright.host.grade.lump;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import org.pumpwright.host.quantity.Uncertain;

/**
 * All readings as a function of all unknowns. The true flow of every point, and its true pressure where that is read, are
 * unknowns too: so the uncertainties of all channels count, not only of one called the dependent one. Thread-safe.
 */
final class SweepModel implements MultivariateJacobianFunction {
    private final LumpInput input;
    private final List<LumpPoint> points;
    private final int unknowns;
    private final int readings;

    /**
     * @param input the whole input
     * @param points those of its points that count
     */
    SweepModel(LumpInput input, List<LumpPoint> points) {
        this.input = input;
        this.points = points;
        int own = 0;
        int read = 0;
        for (LumpPoint point : points) {
            own += owns(point);
            read += 2 + owns(point);
        }
        own += input.deadHead().isPresent() ? 2 : 0;
        read += input.deadHead().isPresent() ? 3 : 0;
        read += input.standstill().isPresent() ? 1 : 0;
        unknowns = Layout.LATENT + own;
        readings = read;
    }

    /** Readings and knowledge beforehand less unknowns. */
    int degreesOfFreedom() {
        return readings + Layout.PRIORS - unknowns;
    }

    int rows() {
        return readings + Layout.PRIORS;
    }

    /** A healthy unit, everything else as measured. */
    double[] start() {
        double[] start = new double[unknowns];
        Arrays.fill(start, 0, Layout.LUMPS, 1);
        Arrays.fill(start, Layout.LATENT, unknowns, 1);
        return start;
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector at) {
        double[] theta = at.toArray();
        Circuit circuit = new Circuit(input, theta);
        Rows rows = new Rows(rows(), unknowns);
        int own = Layout.LATENT;
        for (LumpPoint point : points) {
            addPoint(rows, circuit, point, own);
            own += owns(point);
        }
        if (input.deadHead().isPresent()) {
            addDeadHead(rows, circuit, input.deadHead().get(), own);
        }
        if (input.standstill().isPresent()) {
            Standstill rest = input.standstill().get();
            rows.add(circuit.ohmsAtRest(rest.amps()), rest.ohms(), own, 0);
        }
        for (int i = Layout.LUMPS; i < Layout.LATENT; i++) {
            rows.addKnown(i, theta[i]);
        }
        return rows.all();
    }

    private void addPoint(Rows rows, Circuit circuit, LumpPoint point, int own) {
        int owns = owns(point);
        Gradient flow = circuit.own(own, 0, point.flow().value());
        Gradient pressure = point.pressure().isPresent()
                ? circuit.own(own + 1, 1, unit(point.pressure().get()))
                : flow.divide(circuit.known(Layout.NOZZLE, input.nozzle().orElseThrow()))
                        .square();
        Gradient backEmf = circuit.backEmf(flow, pressure);
        Gradient amps = circuit.amps(backEmf, pressure);
        rows.add(circuit.read(Layout.VOLTS, circuit.volts(backEmf, amps)), point.effectiveVolts(), own, owns);
        rows.add(circuit.read(Layout.AMPS, amps), point.motorAmps(), own, owns);
        rows.add(circuit.read(Layout.FLOW, flow), point.flow(), own, owns);
        point.pressure().ifPresent(read -> rows.add(circuit.read(Layout.PRESSURE, pressure), read, own, owns));
    }

    private static void addDeadHead(Rows rows, Circuit circuit, DeadHead closed, int own) {
        Gradient backEmf = circuit.own(own, 0, unit(closed.effectiveVolts()));
        Gradient pressure = circuit.own(own + 1, 1, unit(closed.pressure()));
        Gradient amps = circuit.amps(backEmf, pressure);
        rows.add(circuit.read(Layout.VOLTS, circuit.volts(backEmf, amps)), closed.effectiveVolts(), own, 2);
        rows.add(circuit.read(Layout.AMPS, amps), closed.motorAmps(), own, 2);
        rows.add(circuit.read(Layout.PRESSURE, pressure), closed.pressure(), own, 2);
    }

    private static int owns(LumpPoint point) {
        return point.pressure().isPresent() ? 2 : 1;
    }

    /** What the true value counts in: what was read, or its uncertainty where next to nothing was read. */
    private static double unit(Uncertain read) {
        return Math.max(Math.abs(read.value()), read.standardUncertainty());
    }
}
