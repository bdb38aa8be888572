package org.pumpwright.host.plant;

/** Temperatures of winding and case, both beginning alike. Confined to the plant's thread. */
final class WindingHeat {

    private final ThermalParameters thermal;
    private final double ambientKelvin;
    private double windingKelvin;
    private double caseKelvin;

    WindingHeat(ThermalParameters thermal, double ambientKelvin, double startKelvin) {
        this.thermal = thermal;
        this.ambientKelvin = ambientKelvin;
        windingKelvin = startKelvin;
        caseKelvin = startKelvin;
    }

    double windingKelvin() {
        return windingKelvin;
    }

    /** One explicit step; the shortest time constant is about 100 s, so steps of milliseconds are far below it. */
    void advance(double seconds, double watts) {
        double toCase = (windingKelvin - caseKelvin) / thermal.windingToCaseKelvinPerWatt();
        double toAir = (caseKelvin - ambientKelvin) / thermal.caseToAirKelvinPerWatt();
        windingKelvin += seconds * (watts - toCase) / thermal.windingJoulePerKelvin();
        caseKelvin += seconds * (toCase - toAir) / thermal.caseJoulePerKelvin();
    }
}
