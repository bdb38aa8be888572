package org.pumpwright.host.plant;

/** Faults of the stand itself. Thread-safe. */
final class StandFaults {

    private StandFaults() {}

    static PumpParameters leadResistance(PumpParameters p, Severity s) {
        StandParameters st = p.stand();
        double heatThatDoubles = s.pick(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 20);
        return p.withStand(st.withFeed(st.openCircuitVolts(), st.leadOhms() + s.pick(0.04, 0.15, 0.5))
                .withLeadDoublingAt(heatThatDoubles));
    }

    static PumpParameters lowSupply(PumpParameters p, Severity s) {
        return p.withStand(p.stand().withFeed(s.pick(13, 12, 11), p.stand().leadOhms()));
    }

    static PumpParameters nozzle(PumpParameters p, double factor) {
        StandParameters st = p.stand();
        return p.withStand(
                st.withOutlet(st.nozzleM3PerSecondRootPascal() * factor, st.recirculationM3PerSecondRootPascal()));
    }

    static PumpParameters recirculationOpen(PumpParameters p, Severity s) {
        double nozzle = p.stand().nozzleM3PerSecondRootPascal();
        return p.withStand(p.stand().withOutlet(nozzle, nozzle * s.pick(0.25, 0.5, 1)));
    }

    static PumpParameters hosesUnpurged(PumpParameters p, Severity s) {
        return p.withStand(p.stand().withLines(p.stand().lines().withAir(s.pick(0.05, 0.1, 0.2))));
    }
}
