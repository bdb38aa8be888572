package org.pumpwright.host.calibrate.fluid;

/** What is caught: water from the tap, or a product whose density was measured. Thread-safe. */
public sealed interface Liquid permits Water, Product {
    /** Its name for a person. */
    String name();

    /** Density at a temperature, kg/m3. */
    double kgPerM3(double celsius);

    /** Change of the density with temperature, kg/m3 a kelvin; mostly below 0. */
    double kgPerM3PerKelvin(double celsius);

    /** The density lies within plus and minus this of what is stated, kg/m3, apart from the temperature. */
    double halfWidthKgPerM3();

    /** The temperatures at which its density is known, degrees Celsius. */
    double leastCelsius();

    double mostCelsius();
}
