package org.pumpwright.host.calibrate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;

/**
 * What one K errs at the calibrated flows and at the ends of the declared range. Both kinds of curve are monotone between those, so
 * the worst is among them.
 */
record RangeErrors(List<SingleK.ErrorAt> all, SingleK.ErrorAt worst) {
    static RangeErrors of(Declared declared, List<FlowPoint> points, KOverFlow curve, KFactor single) {
        List<SingleK.ErrorAt> all = new ArrayList<>();
        List<SingleK.ErrorAt> within = new ArrayList<>();
        for (FlowPoint point : points) {
            SingleK.ErrorAt error = error(point.flow(), point.k(), single);
            all.add(error);
            if (point.set().m3PerSecond() >= declared.range().least().m3PerSecond()
                    && point.set().m3PerSecond() <= declared.range().most().m3PerSecond()) {
                within.add(error);
            }
        }
        for (FlowRate end : List.of(declared.range().least(), declared.range().most())) {
            if (end.m3PerSecond() > 0) {
                SingleK.ErrorAt error = error(end, curve.at(end).k(), single);
                all.add(error);
                within.add(error);
            }
        }
        all.sort(Comparator.comparingDouble(error -> error.flow().m3PerSecond()));
        SingleK.ErrorAt worst = within.stream()
                .max(Comparator.comparingDouble(error -> Math.abs(error.share())))
                .orElseThrow();
        return new RangeErrors(all, worst);
    }

    private static SingleK.ErrorAt error(FlowRate flow, KFactor k, KFactor single) {
        return new SingleK.ErrorAt(flow, k.pulsesPerM3() / single.pulsesPerM3() - 1);
    }
}
