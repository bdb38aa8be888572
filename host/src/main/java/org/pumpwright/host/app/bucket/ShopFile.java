package org.pumpwright.host.app.bucket;

import java.nio.file.Path;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.record.BucketRecord.Shop;

/** Reads the shop's settings for papers. Thread-safe. */
public final class ShopFile {
    private static final DataSchema SCHEMA = DataSchema.beside(ShopFile.class, "shop.schema.json");
    private static final String TITLE = "Calibration report";

    private ShopFile() {}

    /** The shop, and whether its file says that it is invented. */
    public record Settings(Shop shop, boolean invented) {}

    /**
     * Reads the settings.
     *
     * @throws DataFileException when the file is absent or can't be used
     */
    public static Settings read(Path file) throws DataFileException {
        return DataFile.read(file, SCHEMA, ShopFile::settings);
    }

    private static Settings settings(Node file) {
        Shop shop = new Shop(
                file.find("title").map(Node::text).orElse(TITLE),
                file.text("name"),
                file.at("address").items().stream().map(Node::text).toList(),
                file.text("country_code"),
                file.find("accreditation").map(Node::text).orElse(""));
        return new Settings(shop, file.find("invented").isPresent() && file.flag("invented"));
    }
}
