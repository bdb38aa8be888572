package org.pumpwright.host.catalog;

import java.nio.file.Path;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.Temperature;

/** Reads fluids from files. Thread-safe. */
public final class FluidFile {
    private static final DataSchema SCHEMA = DataSchema.beside(FluidFile.class, "fluid.schema.json");
    /** One avoirdupois pound in kilograms over one US gallon in cubic metres, both exact. */
    private static final double KG_PER_M3_PER_POUND_PER_US_GALLON = 0.45359237 / 3.785411784e-3;

    private FluidFile() {}

    /**
     * Reads one fluid.
     *
     * @throws DataFileException when the file is absent or does not hold a usable fluid
     */
    public static Fluid read(Path file) throws DataFileException {
        return DataFile.read(file, SCHEMA, FluidFile::fluid);
    }

    private static Fluid fluid(Node file) {
        return new Fluid(
                file.text("fluid"),
                file.text("title"),
                file.at("densities").items().stream().map(FluidFile::published).toList());
    }

    private static Fluid.Published published(Node node) {
        return new Fluid.Published(
                node.number("pounds_per_us_gallon") * KG_PER_M3_PER_POUND_PER_US_GALLON,
                node.find("fahrenheit").map(value -> Temperature.ofCelsius((value.number() - 32) / 1.8)),
                node.text("source"));
    }
}
