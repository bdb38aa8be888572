package org.pumpwright.host.calibrate;

import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.quantity.Require;

/**
 * A graduated pail or vessel, wetted and drained before each fill. Thread-safe.
 *
 * @param certificate of its marks
 * @param marksShare expanded uncertainty of the marks as a share of the volume
 * @param coverage the factor k that goes with it, 1 to 4
 * @param levelM3 reading the level on a flat plate: off by at most this, either way
 * @param residueM3 what drains or clings more or less than usual: at most this, either way
 * @param expansionPerKelvin of the vessel's volume with temperature
 * @param markedCelsius temperature at which its marks hold
 * @param vesselM3 what it holds
 */
public record Measuring(
        Certificate certificate,
        double marksShare,
        double coverage,
        double levelM3,
        double residueM3,
        double expansionPerKelvin,
        double markedCelsius,
        double vesselM3)
        implements Method {
    public Measuring {
        Require.inRange("uncertainty of the marks", marksShare, 0, 0.2, "");
        Require.inRange("coverage factor of the marks", coverage, 1, 4, "");
        Require.inRange("reading of the level", levelM3, 0, 1, "m3");
        Require.inRange("residue", residueM3, 0, 1, "m3");
        Require.inRange("expansion of the vessel", expansionPerKelvin, 0, 1e-3, "per kelvin");
        Require.inRange("temperature of the marks", markedCelsius, -10, 60, "°C");
        Require.inRange("vessel", vesselM3, 1e-4, 10, "m3");
    }

    @Override
    public String words() {
        return "graduated vessel";
    }
}
