package org.pumpwright.host.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * What a healthy curve belongs to. A pump alone has no curve: the same pump gives more than twice the flow at 30 % duty on
 * a slow driver than on a fast one, and the nozzle and the fluid set its load. Thread-safe.
 *
 * @param model id of the unit model
 * @param driver id of the driver
 * @param pwmHz PWM frequency of the drive, Hz
 * @param nozzle id of the stand's nozzle
 * @param fluid id of the fluid
 */
public record Conditions(String model, String driver, double pwmHz, String nozzle, String fluid) {
    /** Drivers whose frequencies differ by no more than this share count as the same. */
    private static final double FREQUENCY_SHARE = 0.05;

    /** What differs between these conditions and those of a run, in words; empty when the curve may be used. */
    public List<String> differences(Conditions run) {
        List<String> found = new ArrayList<>();
        addIfDifferent(found, "model", model, run.model);
        addIfDifferent(found, "driver", driver, run.driver);
        if (Math.abs(pwmHz - run.pwmHz) > FREQUENCY_SHARE * pwmHz) {
            found.add("PWM frequency %.0f Hz instead of %.0f Hz".formatted(run.pwmHz, pwmHz));
        }
        addIfDifferent(found, "nozzle", nozzle, run.nozzle);
        addIfDifferent(found, "fluid", fluid, run.fluid);
        return found;
    }

    private static void addIfDifferent(List<String> found, String what, String curve, String run) {
        if (!curve.equals(run)) {
            found.add("%s %s instead of %s".formatted(what, run, curve));
        }
    }
}
