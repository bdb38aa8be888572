package org.pumpwright.benchmarks.judgement;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.pumpwright.host.plant.PumpFault;

/**
 * By what words of the program a fault counts as named: a cause's name, or a check of the stand that did not hold. Thread-safe.
 */
final class NamedFault {
    private static final Map<PumpFault, List<String>> CAUSES = new EnumMap<>(PumpFault.class);
    private static final Map<PumpFault, List<String>> CHECKS = new EnumMap<>(PumpFault.class);

    static {
        String chamber = "one chamber pumps little";
        CAUSES.put(PumpFault.SLIP, List.of("valves or diaphragms let liquid slip back"));
        CAUSES.put(PumpFault.DEAD_CHAMBER, List.of(chamber));
        CAUSES.put(PumpFault.TORN_DIAPHRAGM, List.of(chamber, "torn"));
        CAUSES.put(PumpFault.BYPASS_LOW, List.of("the internal bypass opens too early"));
        CAUSES.put(PumpFault.DRAG, List.of("bearing or eccentric drags"));
        CAUSES.put(PumpFault.WEAK_MAGNETS, List.of("motor magnets are weak"));
        CAUSES.put(PumpFault.BRUSH, List.of("brushes or commutator make poor contact"));
        CAUSES.put(PumpFault.SHORTED_TURNS, List.of("armature turns are shorted"));
        CAUSES.put(PumpFault.SUCTION_AIR, List.of("the suction side draws air"));
        CAUSES.put(PumpFault.STRAINER, List.of("the inlet strainer is blocked"));
        CAUSES.put(PumpFault.SEIZED, List.of("the pump is stuck"));
        CAUSES.put(PumpFault.OPEN_CIRCUIT, List.of("winding, brush or lead is open"));
        CAUSES.put(PumpFault.WARM, List.of("came warm", "the motor was hotter"));
        CAUSES.put(PumpFault.COLD_STIFF, List.of("the diaphragms are cold and stiff"));
        CAUSES.put(PumpFault.INTERMITTENT, List.of("a loose contact in the unit"));
        CAUSES.put(PumpFault.SHORT_TO_CASE, List.of("leaks current to the case"));
        CAUSES.put(PumpFault.PRESSURE_SWITCH_LOW, List.of("the demand switch"));
        CAUSES.put(PumpFault.PRESSURE_SWITCH_STICKING, List.of("the demand switch"));
        CAUSES.put(PumpFault.THERMAL_PROTECTOR, List.of("protector"));
        CAUSES.put(PumpFault.LEAD_RESISTANCE, List.of("the stand's supply lead"));
        CAUSES.put(PumpFault.LOW_SUPPLY, List.of("the stand's supply is low"));
        CAUSES.put(PumpFault.HOSES_UNPURGED, List.of("the stand's hoses still hold air"));
        CAUSES.put(PumpFault.NOZZLE_PLUGGED, List.of("the stand's nozzle is partly plugged"));
        CAUSES.put(PumpFault.NOZZLE_WORN, List.of("the stand's nozzle is too large or worn"));
        CAUSES.put(PumpFault.RECIRCULATION_OPEN, List.of("a recirculation valve of the stand"));
        CHECKS.put(PumpFault.SUCTION_AIR, List.of("air"));
        CHECKS.put(PumpFault.HOSES_UNPURGED, List.of("air"));
        CHECKS.put(PumpFault.LEAD_RESISTANCE, List.of("supply and lead"));
        CHECKS.put(PumpFault.LOW_SUPPLY, List.of("supply at rest"));
        CHECKS.put(PumpFault.NOZZLE_PLUGGED, List.of("nozzle"));
        CHECKS.put(PumpFault.NOZZLE_WORN, List.of("nozzle"));
    }

    private NamedFault() {}

    /** Place of the fault in the list, from 1; 0 when it is not there. */
    static int place(PumpFault fault, Judgement judgement) {
        List<String> checks = CHECKS.getOrDefault(fault, List.of());
        for (int i = 0; i < judgement.failedChecks().size(); i++) {
            if (checks.contains(judgement.failedChecks().get(i))) {
                return i + 1;
            }
        }
        List<String> causes = CAUSES.getOrDefault(fault, List.of());
        for (int i = 0; i < judgement.causes().size(); i++) {
            String name = judgement.causes().get(i);
            if (causes.stream().anyMatch(name::contains)) {
                return i + 1;
            }
        }
        return 0;
    }
}
