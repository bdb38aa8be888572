package org.pumpwright.host.calibrate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.calibrate.fluid.Liquid;
import org.pumpwright.host.quantity.UnitSystem;

/**
 * One bucket test as it was carried out. Thread-safe.
 *
 * @param day of the test
 * @param bench what it was made with
 * @param liquidName what was caught, for a person
 * @param liquid its density; empty where a product was caught whose density nobody measured, with which nothing can be weighed
 * @param declared what is said about the meter
 * @param runs as on the sheet
 * @param rules to read it by
 * @param units in which sentences speak
 */
public record BucketTest(
        LocalDate day,
        Bench bench,
        String liquidName,
        Optional<Liquid> liquid,
        Declared declared,
        List<Run> runs,
        Rules rules,
        UnitSystem units) {
    public BucketTest {
        runs = List.copyOf(runs);
    }
}
