package org.pumpwright.benchmarks.dwell;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.Severity;

/** Units as a shop may get them: every second one healthy, the others with a fault drawn from all. Thread-safe. */
final class UnitMix {
    private static final long SEED = 20_260_302;

    /** With these the flow at a held set point never becomes steady, or only after minutes: there is no truth to be off from. */
    private static final Set<PumpFault> NEVER_STEADY = EnumSet.of(
            PumpFault.SUCTION_AIR,
            PumpFault.HOSES_UNPURGED,
            PumpFault.COLD_STIFF,
            PumpFault.INTERMITTENT,
            PumpFault.THERMAL_PROTECTOR,
            PumpFault.PRESSURE_SWITCH_LOW,
            PumpFault.PRESSURE_SWITCH_STICKING,
            PumpFault.BRUSH);

    private UnitMix() {}

    /**
     * One unit.
     *
     * @param number decides everything that is random in it
     * @param fault what is wrong with it or with the stand
     * @param parameters the unit with its fault
     */
    record Unit(int number, PumpFault fault, PumpParameters parameters) {
        boolean becomesSteady() {
            return !NEVER_STEADY.contains(fault);
        }
    }

    /** The first units of the mix. */
    static List<Unit> draw(int count) {
        Random random = new Random(SEED);
        PumpPopulation population = new PumpPopulation(SEED);
        PumpFault[] faults = PumpFault.values();
        List<Unit> units = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            PumpFault fault = number % 2 == 0 ? PumpFault.HEALTHY : faults[1 + random.nextInt(faults.length - 1)];
            Severity severity = Severity.values()[random.nextInt(Severity.values().length)];
            units.add(new Unit(number, fault, fault.applyTo(population.unit(number), severity)));
        }
        return units;
    }
}
