package org.pumpwright.host.calibrate;

/** What makes K uncertain. Thread-safe. */
public enum Effect {
    SCALE_CERTIFICATE("scale certificate", true, false, 0),
    SCALE_LINEARITY("scale linearity and eccentricity", false, true, 1),
    SCALE_RESOLUTION("scale resolution, twice", false, false, 0.5),
    SCALE_DRIFT("scale zero drift", false, true, 1),
    SPLASH("splash, drip, hang-up", false, true, 1),
    TEMPERATURE("liquid temperature", true, true, 1),
    LIQUID_DENSITY("liquid density", true, true, 1),
    BUOYANCY("buoyancy", true, false, 1),
    VESSEL_MARKS("marks of the vessel", true, false, 0),
    LEVEL("reading of the level", false, true, 1),
    RESIDUE("residue in the vessel", false, true, 1),
    VESSEL_TEMPERATURE("temperature of the vessel", true, true, 1),
    MASTER_CERTIFICATE("master meter certificate", true, false, 0),
    MASTER_DRIFT("master meter drift", true, true, 1),
    MASTER_PULSE("master meter, one pulse", false, false, 0.5),
    LINE_VOLUME("line volume, trapped air", false, true, 1),
    SWITCHING("begin and end, twice", true, true, 0.5),
    PULSE("one pulse", false, false, 0.5),
    REPEATABILITY("repeatability of the mean", false, false, 0);

    private final String words;
    private final boolean sharedByFlows;
    private final boolean judged;
    private final double flatness;

    Effect(String words, boolean sharedByFlows, boolean judged, double flatness) {
        this.words = words;
        this.sharedByFlows = sharedByFlows;
        this.judged = judged;
        this.flatness = flatness;
    }

    /** For a budget on paper. */
    public String words() {
        return words;
    }

    /** Whether one and the same unknown error goes into every flow of a test. */
    public boolean sharedByFlows() {
        return sharedByFlows;
    }

    /** Whether its size is somebody's judgement, rather than a certificate's, a step's or a count's. */
    public boolean isJudged() {
        return judged;
    }

    /**
     * How flat its distribution is: 1 for one rectangular error, 0.5 for two equal ones added (tare and gross, begin and end), 0
     * for a normal one. Excess kurtosis over -1.2, which is that of the rectangle.
     */
    double flatness() {
        return flatness;
    }
}
