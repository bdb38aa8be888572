package org.pumpwright.host.grade.lump;

import org.hipparchus.analysis.differentiation.Gradient;
import org.pumpwright.host.quantity.Uncertain;

/**
 * The pump's equations at one guess of the unknowns, each result with its derivatives: {@code U = V_b + R I + e}, {@code I =
 * I_0 + b e + a p}, {@code Q = g e (1 - c p) - C_l p}, with {@code e} the back-EMF, and what each channel then reads.
 * Confined to one thread.
 */
final class Circuit {
    private final double[] theta;
    private final SharedErrors shared;
    private final Gradient flowPerVolt;
    private final Gradient noLoadAmps;
    private final Gradient ampsPerPressure;
    private final Gradient ohms;
    private final Gradient slip;
    private final Gradient viscous;
    private final Gradient brush;
    private final Gradient compliance;

    Circuit(LumpInput input, double[] theta) {
        this.theta = theta;
        shared = input.shared();
        HealthyModel healthy = input.healthy();
        flowPerVolt = common(Layout.FLOW_PER_VOLT).multiply(healthy.flowPerVolt());
        noLoadAmps = common(Layout.NO_LOAD_AMPS).multiply(healthy.noLoadAmps());
        ampsPerPressure = common(Layout.AMPS_PER_PRESSURE).multiply(healthy.ampsPerPressure());
        ohms = common(Layout.OHMS).multiply(healthy.ohms());
        slip = common(Layout.SLIP).multiply(healthy.slip());
        viscous = known(Layout.VISCOUS, healthy.viscousAmpsPerVolt());
        brush = known(Layout.BRUSH, healthy.brushVolts());
        compliance = known(Layout.COMPLIANCE, healthy.compliance());
    }

    /** An unknown of a point: its number among all, its number within the point, and what it counts in. */
    Gradient own(int index, int within, double unit) {
        return Gradient.variable(Layout.LOCAL, Layout.LATENT + within, theta[index])
                .multiply(unit);
    }

    /** A quantity known beforehand. */
    Gradient known(int index, Uncertain beforehand) {
        return common(index).multiply(beforehand.standardUncertainty()).add(beforehand.value());
    }

    /** Back-EMF at which the pump gives this flow against this pressure. */
    Gradient backEmf(Gradient flow, Gradient pressure) {
        Gradient filling = compliance.multiply(pressure).negate().add(1);
        return slip.multiply(pressure).add(flow).divide(flowPerVolt.multiply(filling));
    }

    Gradient amps(Gradient backEmf, Gradient pressure) {
        return viscous.multiply(backEmf).add(ampsPerPressure.multiply(pressure)).add(noLoadAmps);
    }

    Gradient volts(Gradient backEmf, Gradient amps) {
        return ohms.multiply(amps).add(backEmf).add(brush);
    }

    /** What a channel reads of a quantity. */
    Gradient read(int channel, Gradient quantity) {
        SharedErrors.Channel errors = errors(channel);
        Gradient read = errors.gain() == 0 ? quantity : quantity.multiply(gain(channel));
        return errors.zero() == 0 ? read : read.add(common(Layout.zero(channel)).multiply(errors.zero()));
    }

    /** Volts over amps at rest, as read. */
    Gradient ohmsAtRest(double amps) {
        return brush.divide(amps).add(ohms).multiply(gain(Layout.VOLTS)).divide(gain(Layout.AMPS));
    }

    private Gradient gain(int channel) {
        return common(Layout.gain(channel)).multiply(errors(channel).gain()).add(1);
    }

    private Gradient common(int index) {
        return Gradient.variable(Layout.LOCAL, index, theta[index]);
    }

    private SharedErrors.Channel errors(int channel) {
        return switch (channel) {
            case Layout.VOLTS -> shared.volts();
            case Layout.AMPS -> shared.amps();
            case Layout.FLOW -> shared.flow();
            default -> shared.pressure();
        };
    }
}
