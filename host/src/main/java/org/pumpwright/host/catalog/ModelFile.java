package org.pumpwright.host.catalog;

import java.nio.file.Path;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

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
                file.number("amps_limit"));
    }
}
