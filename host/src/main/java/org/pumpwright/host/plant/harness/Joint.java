package org.pumpwright.host.plant.harness;

import org.pumpwright.host.plant.Range;

/**
 * A connector, splice, fuse holder or stud: {@code V = R (1 + h I²) I + V_ox (1 - exp(-I/I_ox))}. The first part is
 * contact that warms with the current, the second a semiconducting oxide, which shows as an offset in volts against
 * amps. The shape is assumed. Thread-safe.
 *
 * @param name its name on the bench
 * @param ohms contact resistance cold
 * @param warmingPerSquareAmp h, share by which its resistance rises per A² once warm
 * @param oxideVolts V_ox
 * @param oxideAmps I_ox
 */
public record Joint(String name, double ohms, double warmingPerSquareAmp, double oxideVolts, double oxideAmps)
        implements Element {

    public Joint {
        Range.check("joint resistance", ohms, 0, 1e9, "ohm");
        Range.check("joint warming", warmingPerSquareAmp, 0, 1, "1/A2");
        Range.check("oxide voltage", oxideVolts, 0, 10, "V");
        Range.check("oxide current", oxideAmps, 1e-3, 100, "A");
    }

    /** A joint in good order. */
    static Joint clean(String name, double ohms) {
        return new Joint(name, ohms, 0, 0, 1);
    }

    @Override
    public double drop(double amps, double heatedBy) {
        return ohms * (1 + warmingPerSquareAmp * heatedBy) * amps
                + oxideVolts * (1 - StrictMath.exp(-amps / oxideAmps));
    }

    @Override
    public double smallCurrentOhms() {
        return ohms + oxideVolts / oxideAmps;
    }
}
