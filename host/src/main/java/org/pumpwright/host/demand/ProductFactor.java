package org.pumpwright.host.demand;

import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Require;

/**
 * What a product's density does where nozzles or orifices meter. At one pressure an orifice passes a volume that goes with
 * the inverse root of the density, so a flow of product asks of pump and nozzle what the flow times {@code sqrt(SG)} of water
 * would: {@code water = product * sqrt(SG)}. Extension services print that root as the conversion factor of their nozzle
 * tables (Univ. of Nebraska 2016, Univ. of Georgia 2026), with water at 8.34 lb/gal, which is used here too. It holds for
 * turbulent flow through nozzles, not for viscous product in narrow tubes. Thread-safe.
 *
 * @param kilogramsPerM3 the product's density, 500 to 2500
 */
public record ProductFactor(double kilogramsPerM3) {
    /** Water as the nozzle tables take it. */
    public static final double WATER_POUNDS_PER_US_GALLON = 8.34;

    /** One avoirdupois pound in kilograms over one US gallon in cubic metres, both exact. */
    public static final double KG_PER_M3_PER_POUND_PER_US_GALLON = 0.45359237 / 3.785411784e-3;

    public ProductFactor {
        Require.inRange("density", kilogramsPerM3, 500, 2500, "kg/m3");
    }

    public static ProductFactor ofPoundsPerUsGallon(double pounds) {
        return new ProductFactor(pounds * KG_PER_M3_PER_POUND_PER_US_GALLON);
    }

    public double poundsPerUsGallon() {
        return kilogramsPerM3 / KG_PER_M3_PER_POUND_PER_US_GALLON;
    }

    /** Density over that of water. */
    public double specificGravity() {
        return poundsPerUsGallon() / WATER_POUNDS_PER_US_GALLON;
    }

    public double rootOfSpecificGravity() {
        return Math.sqrt(specificGravity());
    }

    /** The water flow that asks as much of pump and nozzles as this flow of the product. */
    public FlowRate asWater(FlowRate product) {
        return new FlowRate(product.m3PerSecond() * rootOfSpecificGravity());
    }

    /** The flow of the product where this flow of water would be. */
    public FlowRate ofWater(FlowRate water) {
        return new FlowRate(water.m3PerSecond() / rootOfSpecificGravity());
    }
}
