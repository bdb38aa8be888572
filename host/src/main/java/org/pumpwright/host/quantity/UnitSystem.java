package org.pumpwright.host.quantity;

/** The units that a person reads. What is stored is always SI. Thread-safe. */
public enum UnitSystem {
    /** US gallons, pounds per square inch, degrees Fahrenheit. */
    US,
    /** Litres, kilopascals, degrees Celsius. */
    METRIC
}
