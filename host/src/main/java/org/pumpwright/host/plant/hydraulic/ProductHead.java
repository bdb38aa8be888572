package org.pumpwright.host.plant.hydraulic;

/** The part that moves the product. Thread-safe. */
public sealed interface ProductHead permits DisplacementHead, CentrifugalHead {

    /** What it does at a shaft speed against a nozzle (m3/s per root pascal; 0 is closed). */
    LoadPoint against(double speedRadPerSecond, double nozzle);

    /** Share of the flow that is air. */
    double airFraction();

    /** The same head with this share of the flow as air. */
    ProductHead withAir(double fraction);
}
