package org.pumpwright.host.claim;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;

/**
 * What the colours of the shop's tags mean. Thread-safe.
 *
 * @param meanings by colour
 */
public record TagColoursFile(Map<String, String> meanings) {
    private static final DataSchema SCHEMA = DataSchema.beside(TagColoursFile.class, "tags.schema.json");

    public TagColoursFile {
        meanings = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(meanings));
    }

    /**
     * Reads the colours.
     *
     * @throws DataFileException when the file is absent or does not hold them
     */
    public static TagColoursFile read(Path file) throws DataFileException {
        return DataFile.read(file, SCHEMA, root -> {
            Map<String, String> meanings = new LinkedHashMap<>();
            root.at("tags")
                    .keys()
                    .forEach(colour -> meanings.put(colour, root.at("tags").text(colour)));
            return new TagColoursFile(meanings);
        });
    }

    /**
     * A colour that the shop uses.
     *
     * @throws RefusedException when it does not, naming those that it uses
     */
    public String checked(String colour) throws RefusedException {
        if (!meanings.containsKey(colour)) {
            throw new RefusedException("no tag is %s here. The colours are: %s."
                    .formatted(
                            colour,
                            meanings.entrySet().stream()
                                    .map(each -> each.getKey() + " (" + each.getValue() + ")")
                                    .collect(java.util.stream.Collectors.joining(", "))));
        }
        return colour;
    }
}
