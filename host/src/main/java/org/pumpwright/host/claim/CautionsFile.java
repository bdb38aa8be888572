package org.pumpwright.host.claim;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

/**
 * What whoever opens a unit should know of the product in it. Thread-safe.
 *
 * @param general what holds for every unit, and all that can be said of one whose product nobody knows
 * @param products what holds for one product besides
 */
public record CautionsFile(List<String> general, List<Product> products) {
    private static final DataSchema SCHEMA = DataSchema.beside(CautionsFile.class, "cautions.schema.json");

    public CautionsFile {
        general = List.copyOf(general);
        products = List.copyOf(products);
    }

    /**
     * A product.
     *
     * @param names words by which it is known, small letters
     * @param says what to know of it
     */
    public record Product(List<String> names, List<String> says) {
        public Product {
            names = List.copyOf(names);
            says = List.copyOf(says);
        }

        private boolean is(String product) {
            return names.stream().anyMatch(product::contains);
        }
    }

    /**
     * Reads the cautions.
     *
     * @throws DataFileException when the file is absent or does not hold them
     */
    public static CautionsFile read(Path file) throws DataFileException {
        return DataFile.read(
                file,
                SCHEMA,
                root -> new CautionsFile(
                        texts(root.at("general")),
                        root.at("products").items().stream()
                                .map(node -> new Product(texts(node.at("names")), texts(node.at("says"))))
                                .toList()));
    }

    private static List<String> texts(Node list) {
        return list.items().stream().map(Node::text).toList();
    }

    /** What to know before a unit is opened that pumped this; a product that is not listed has the general cautions. */
    public List<String> of(String product) {
        String pumped = product.strip().toLowerCase(Locale.ROOT);
        List<String> special = products.stream()
                .filter(each -> each.is(pumped))
                .flatMap(each -> each.says().stream())
                .toList();
        return java.util.stream.Stream.concat(special.stream(), general.stream())
                .distinct()
                .toList();
    }
}
