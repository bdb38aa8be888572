package org.pumpwright.host.curve;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

/** Reads lists of known-good units. Thread-safe. */
public final class KnownGoodFile {
    private static final DataSchema SCHEMA = DataSchema.beside(KnownGoodFile.class, "known-good.schema.json");

    private KnownGoodFile() {}

    /**
     * Reads one list.
     *
     * @throws DataFileException when the file is absent or does not hold a usable list
     */
    public static KnownGoodList read(Path file) throws DataFileException {
        return DataFile.read(file, SCHEMA, KnownGoodFile::list);
    }

    private static KnownGoodList list(Node file) {
        return new KnownGoodList(
                file.text("declared_by"),
                Days.of(file.at("declared_on")),
                file.text("model"),
                reasons(file.at("units")));
    }

    private static Map<String, String> reasons(Node units) {
        Map<String, String> reasons = new LinkedHashMap<>();
        for (Node unit : units.items()) {
            String serial = unit.text("serial").strip();
            if (reasons.put(serial, unit.text("because")) != null) {
                unit.at("serial").refuse("is " + unit.at("serial").found() + ", which is listed a second time");
            }
        }
        return reasons;
    }
}
