package org.pumpwright.host.calibrate.simulated;

/**
 * Density of water by G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, as restated by F. E. Jones and G. L. Harris, J. Res. NIST 97
 * (1992) 335: another formula than the one that a test is worked out with. The two differ by a few parts in a million.
 */
final class KellWater {
    private KellWater() {}

    /** Air-free, kg/m3, 0 to 40 degrees Celsius. */
    static double kgPerM3(double t) {
        double above = 999.83952
                + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
        return above / (1 + 16.879850e-3 * t);
    }
}
