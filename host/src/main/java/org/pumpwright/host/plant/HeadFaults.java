package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

/** Faults of pump head, diaphragms and inlet. Thread-safe. */
final class HeadFaults {

    private HeadFaults() {}

    static PumpParameters slip(PumpParameters p, Severity s) {
        HeadParameters h = p.head();
        return p.withHead(h.withLeaks(
                h.slipM3PerSecondPascal() * s.pick(8, 20, 40), h.backflowM3PerRadian() * s.pick(1.2, 1.5, 2)));
    }

    static PumpParameters deadChamber(PumpParameters p, Severity s) {
        HeadParameters h = p.head();
        double dead = h.deadChambers() + s.pick(0.3, 0.7, 1);
        return p.withHead(h.withFilling(dead, h.airFraction(), h.inletCeilingM3PerSecond()));
    }

    static PumpParameters tornDiaphragm(PumpParameters p, Severity s) {
        return deadChamber(p, s).withArrival(p.arrival().with(Finding.WEEPS));
    }

    static PumpParameters bypassLow(PumpParameters p, Severity s) {
        return p.withHead(p.head().withBypassOpening(s.pick(50, 35, 20) * PSI));
    }

    static PumpParameters suctionAir(PumpParameters p, Severity s) {
        HeadParameters h = p.head();
        return p.withHead(h.withFilling(h.deadChambers(), s.pick(0.05, 0.15, 0.35), h.inletCeilingM3PerSecond()));
    }

    static PumpParameters strainer(PumpParameters p, Severity s) {
        HeadParameters h = p.head();
        double ceiling = s.pick(3.6, 2.8, 1.5) * GALLON_PER_MINUTE;
        return p.withHead(h.withFilling(h.deadChambers(), h.airFraction(), ceiling));
    }

    static PumpParameters coldStiff(PumpParameters p, Severity s) {
        return p.withArrival(p.arrival()
                .stiff(s.pick(0.35, 0.5, 0.65), s.pick(0.75, 0.9, 1.1))
                .with(Finding.COLD));
    }
}
