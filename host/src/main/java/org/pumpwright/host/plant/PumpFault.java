package org.pumpwright.host.plant;

/**
 * What can be wrong with the unit or with the stand, as a change of parameters. The sizes per severity are assumed
 * starting values from memory (docs/metrology/plant.md lists them). Thread-safe.
 */
public enum PumpFault implements Fault {
    HEALTHY("healthy", "Unit and stand are in good order."),
    SLIP("slip", "Worn valves or diaphragms let liquid back, more so at high pressure."),
    DEAD_CHAMBER("dead-chamber", "One chamber delivers little or nothing: debris in a valve or a torn diaphragm."),
    TORN_DIAPHRAGM("torn-diaphragm", "A diaphragm is torn: its chamber fails and liquid weeps out."),
    BYPASS_LOW("bypass-low", "The internal bypass opens at too low a pressure."),
    DRAG("drag", "Bearing or eccentric turns hard."),
    WEAK_MAGNETS("weak-magnets", "The motor's magnets have lost strength."),
    BRUSH("brush", "Brushes or commutator make poor contact that changes with the shaft's position."),
    SHORTED_TURNS("shorted-turns", "Some armature turns are shorted."),
    SUCTION_AIR("suction-air", "The suction side draws air."),
    STRAINER("strainer", "The inlet strainer is clogged and lets only so much through."),
    SEIZED("seized", "The shaft does not turn; alike at every severity."),
    OPEN_CIRCUIT("open-circuit", "Winding, brush or lead is open and no current flows; alike at every severity."),
    INTERMITTENT("intermittent-open", "A loose contact in the unit opens for a moment now and then."),
    SHORT_TO_CASE("short-to-case", "A lead or the winding has a path to the case and current passes the motor by."),
    THERMAL_PROTECTOR("thermal-protector", "The thermal protector opens at too low a temperature."),
    PRESSURE_SWITCH_LOW("switch-low", "The demand switch opens at too low a pressure and cycles."),
    PRESSURE_SWITCH_STICKING("switch-sticking", "The demand switch opens too early and then sticks open."),
    COLD_STIFF("cold-stiff", "The diaphragms are cold and stiff; they thaw within minutes of running."),
    WARM("warm", "The unit is in good order and comes warm."),
    POLARITY(
            "polarity-reversed",
            "The leads are swapped; most wobble-plate pumps do not mind; alike at every severity."),
    LEAD_RESISTANCE("lead-resistance", "The stand's supply lead or its plug has too much resistance."),
    LOW_SUPPLY("low-supply", "The stand's supply voltage is low."),
    NOZZLE_PLUGGED("nozzle-plugged", "The stand's nozzle is partly plugged."),
    NOZZLE_WORN("nozzle-worn", "The stand's nozzle is worn open."),
    RECIRCULATION_OPEN("recirculation-open", "The stand's recirculation valve was left open."),
    HOSES_UNPURGED("hoses-unpurged", "The stand's hoses still hold air when the run begins.");

    private final String word;
    private final String sentence;

    PumpFault(String word, String sentence) {
        this.word = word;
        this.sentence = sentence;
    }

    /** The parameters of the given unit and stand after this fault has come to it. */
    public PumpParameters applyTo(PumpParameters p, Severity s) {
        return switch (this) {
            case HEALTHY -> p;
            case SLIP -> HeadFaults.slip(p, s);
            case DEAD_CHAMBER -> HeadFaults.deadChamber(p, s);
            case TORN_DIAPHRAGM -> HeadFaults.tornDiaphragm(p, s);
            case BYPASS_LOW -> HeadFaults.bypassLow(p, s);
            case SUCTION_AIR -> HeadFaults.suctionAir(p, s);
            case STRAINER -> HeadFaults.strainer(p, s);
            case COLD_STIFF -> HeadFaults.coldStiff(p, s);
            case DRAG -> MotorFaults.drag(p, s);
            case WEAK_MAGNETS -> MotorFaults.weakMagnets(p, s);
            case BRUSH -> MotorFaults.brush(p, s);
            case SHORTED_TURNS -> MotorFaults.shortedTurns(p, s);
            case SEIZED -> MotorFaults.seized(p);
            case WARM -> MotorFaults.warm(p, s);
            case OPEN_CIRCUIT -> CircuitFaults.openCircuit(p);
            case INTERMITTENT -> CircuitFaults.intermittent(p, s);
            case SHORT_TO_CASE -> CircuitFaults.shortToCase(p, s);
            case THERMAL_PROTECTOR -> CircuitFaults.thermalProtector(p, s);
            case PRESSURE_SWITCH_LOW -> CircuitFaults.pressureSwitchLow(p, s);
            case PRESSURE_SWITCH_STICKING -> CircuitFaults.pressureSwitchSticking(p, s);
            case POLARITY -> CircuitFaults.polarity(p);
            case LEAD_RESISTANCE -> StandFaults.leadResistance(p, s);
            case LOW_SUPPLY -> StandFaults.lowSupply(p, s);
            case NOZZLE_PLUGGED -> StandFaults.nozzle(p, s.pick(0.8, 0.6, 0.4));
            case NOZZLE_WORN -> StandFaults.nozzle(p, s.pick(1.2, 1.4, 1.6));
            case RECIRCULATION_OPEN -> StandFaults.recirculationOpen(p, s);
            case HOSES_UNPURGED -> StandFaults.hosesUnpurged(p, s);
        };
    }

    @Override
    public String word() {
        return word;
    }

    @Override
    public String sentence() {
        return sentence;
    }

    @Override
    public boolean ofTheStand() {
        return switch (this) {
            case LEAD_RESISTANCE, LOW_SUPPLY, NOZZLE_PLUGGED, NOZZLE_WORN, RECIRCULATION_OPEN, HOSES_UNPURGED -> true;
            default -> false;
        };
    }
}
