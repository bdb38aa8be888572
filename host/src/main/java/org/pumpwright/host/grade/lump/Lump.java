package org.pumpwright.host.grade.lump;

/**
 * A figure of the unit that can be told from what flows in and out of it. Torque constant and displacement alone cannot:
 * without the shaft's speed only their ratio shows. Thread-safe.
 */
public enum Lump {
    /** Flow a volt of back-EMF at no pressure, (D - q_b) / k: up with weak magnets, down with lost displacement or air. */
    FLOW_PER_VOLT("flow per volt", "m3/s/V"),
    /** Motor current that running friction takes, T_f / k: up with drag. */
    NO_LOAD_AMPS("no-load amps", "A"),
    /** Motor current a pascal of outlet pressure takes, D / (eta k). */
    AMPS_PER_PRESSURE("amps per pressure", "A/Pa"),
    /** Armature, brushes and joints between the pins: up with bad brushes. */
    OHMS("circuit ohms", "ohm"),
    /** Leak back past valves and diaphragms a pascal: up with worn valves. */
    SLIP("slip", "m3/s/Pa"),
    /** Duty at which the unit starts, from the ramp; not fitted. */
    START_DUTY("start duty", "share"),
    /** Change of current over the run from warming, from the findings; not fitted. */
    AMPS_DRIFT("drift of amps", "share");

    private final String words;
    private final String unit;

    Lump(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    /** The lump for people. */
    public String words() {
        return words;
    }

    /** Its SI unit. */
    public String unit() {
        return unit;
    }
}
