package org.pumpwright.host.rule;

import java.util.List;
import org.pumpwright.host.quantity.Require;

/**
 * How much the nozzle weighs on a point: {@code d ln(quantity) / d ln(nozzle)} over the duty, and how well the nozzle is
 * known. Thread-safe.
 *
 * @param exponents in order of duty; empty where the nozzle's weight is not known, and then it is left out
 * @param measuredShare standard uncertainty of the nozzle where the pressure before it was read
 * @param unmeasuredShare the same where it was not
 * @param source where they stand
 */
public record NozzleEffect(List<Exponent> exponents, double measuredShare, double unmeasuredShare, Source source) {
    /** Nothing is known of it. */
    public static final NozzleEffect NONE = new NozzleEffect(List.of(), 0, 0, Source.PROGRAM);

    public NozzleEffect {
        exponents = List.copyOf(exponents);
        Require.inRange("measured nozzle", measuredShare, 0, 1, "");
        Require.inRange("unmeasured nozzle", unmeasuredShare, 0, 1, "");
    }

    /**
     * The exponents at one duty.
     *
     * @param duty 0 to 1
     * @param flow of the flow
     * @param motorAmps of the motor current
     */
    public record Exponent(double duty, double flow, double motorAmps) {}

    /** The exponents at a duty, linear between those given and constant beyond; 0 where none is given. */
    public Exponent at(double duty) {
        if (exponents.isEmpty()) {
            return new Exponent(duty, 0, 0);
        }
        Exponent before = exponents.get(0);
        for (Exponent after : exponents) {
            if (after.duty() >= duty) {
                double width = after.duty() - before.duty();
                double t = width == 0 ? 0 : Math.max(0, (duty - before.duty()) / width);
                return new Exponent(
                        duty,
                        before.flow() + t * (after.flow() - before.flow()),
                        before.motorAmps() + t * (after.motorAmps() - before.motorAmps()));
            }
            before = after;
        }
        return new Exponent(duty, before.flow(), before.motorAmps());
    }
}
