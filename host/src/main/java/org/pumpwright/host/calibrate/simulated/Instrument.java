package org.pumpwright.host.calibrate.simulated;

import org.pumpwright.host.calibrate.Comparing;
import org.pumpwright.host.calibrate.Measuring;
import org.pumpwright.host.calibrate.Method;
import org.pumpwright.host.calibrate.Reading;
import org.pumpwright.host.calibrate.Weighing;
import org.pumpwright.host.quantity.FlowRate;

/** What a scale, a vessel or a master meter with its errors shows of a volume. */
record Instrument(Method method, TestErrors test, FlowErrors ofFlow, Dice dice) {
    private static final double STEEL_KG_PER_M3 = 8000;
    private static final double BUCKET_KG = 0.9;

    /**
     * The reading.
     *
     * @param flow through both meters, m3/s
     * @param seconds of counting
     * @param caught volume in bucket or vessel, m3
     */
    Reading read(double flow, double seconds, double caught) {
        if (method instanceof Weighing weighing) {
            return weights(weighing, caught);
        }
        if (method instanceof Measuring vessel) {
            double warm = 1 + vessel.expansionPerKelvin() * (test.celsius() - vessel.markedCelsius());
            return new Reading.Level(caught / warm * (1 + test.instrumentOff()) + ofFlow.instrumentOff());
        }
        Comparing master = (Comparing) method;
        double passed = flow * seconds - ofFlow.lineM3();
        double k = master.k().at(new FlowRate(flow)).pulsesPerM3() * (1 + test.instrumentOff());
        return new Reading.MasterPulses(Math.floor(k * passed + dice.phase()));
    }

    /** The scale balances weight less lift of the water against weight less lift of the steel it was set with. */
    private Reading weights(Weighing weighing, double caught) {
        double pull = caught * (test.liquidKgPerM3() - test.airKgPerM3());
        double shown = pull / (1 - test.airKgPerM3() / STEEL_KG_PER_M3);
        double step = weighing.scale().resolutionKg();
        double tare = BUCKET_KG + step * dice.phase();
        double gross = tare + shown + test.instrumentOff() + ofFlow.instrumentOff();
        return new Reading.Weights(rounded(tare, step), rounded(gross, step));
    }

    private static double rounded(double kg, double step) {
        return Math.rint(kg / step) * step;
    }
}
