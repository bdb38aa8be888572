package org.pumpwright.host.catalog;

import java.nio.file.Path;
import java.util.OptionalDouble;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.Volume;

/** Reads models of units from files. Thread-safe. */
public final class ModelFile {
    private static final DataSchema SCHEMA = DataSchema.beside(ModelFile.class, "model.schema.json");

    private ModelFile() {}

    /**
     * Reads one model.
     *
     * @throws DataFileException when the file is absent or does not hold a usable model
     */
    public static UnitModel read(Path file) throws DataFileException {
        return DataFile.read(file, SCHEMA, ModelFile::model);
    }

    private static UnitModel model(Node file) {
        return new UnitModel(
                file.text("model"),
                file.text("title"),
                UnitKind.ofWord(file.text("kind")),
                file.text("plan"),
                file.flag("invented"),
                file.number("amps_limit"),
                file.find("rules").map(Node::text).orElse(file.text("kind")),
                new Nominal(
                        number(file, "meter_pulses_per_gallon", Volume.M3_PER_US_GALLON),
                        number(file, "output_hertz", 1),
                        number(file, "rated_amps", 1)));
    }

    private static OptionalDouble number(Node file, String key, double unit) {
        return file.find(key).stream().mapToDouble(node -> node.number() / unit).findFirst();
    }
}
