package org.pumpwright.host.datafile;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A JSON schema (draft 2020-12) that says which keys and values a kind of file may hold. Beside the standard keywords it
 * reads two: {@code x-unit}, the unit of a number, and {@code x-allowed}, words for what is allowed where the standard
 * keywords would not be understood at the bench. Thread-safe.
 */
public final class DataSchema {
    private static final JsonMapper JSON = new JsonMapper();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private final JsonNode source;
    private final Schema schema;

    private DataSchema(JsonNode source) {
        this.source = source;
        this.schema = REGISTRY.getSchema(source);
    }

    /**
     * Loads the schema that is stored as a resource beside a class.
     *
     * @throws IllegalStateException when there is no such resource
     */
    public static DataSchema beside(Class<?> owner, String resource) {
        try (InputStream in = owner.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("no resource " + resource + " beside " + owner.getName());
            }
            JsonNode source = JSON.readTree(in);
            writeOut(source, source.path("$defs"));
            return new DataSchema(source);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts what is shared in place of the references to it, so that every part of the schema can be put in words. */
    private static void writeOut(JsonNode part, JsonNode shared) {
        if (part instanceof ObjectNode group && group.has("$ref")) {
            String name = group.remove("$ref").stringValue().replace("#/$defs/", "");
            group.setAll((ObjectNode) shared.path(name).deepCopy());
        }
        part.forEach(inner -> writeOut(inner, shared));
    }

    /** Notes in the document where it does not keep to this schema, at most one problem for a value. */
    void check(Document document) {
        List<Error> errors = new ArrayList<>(schema.validate(document.root()));
        // A key that is wrong only in this case is told from fewer neighbours, so that report goes first.
        errors.sort(Comparator.comparing(error -> !isForThisCase(error)));
        errors.forEach(error -> note(document, error));
    }

    private void note(Document document, Error error) {
        String path = path(error.getInstanceLocation());
        JsonNode part = at(error.getInstanceLocation());
        switch (error.getKeyword()) {
            case "required" -> missing(document, path, part, error.getProperty());
            case "additionalProperties", "propertyNames" ->
                unknown(document, path, error.getProperty(), known(error, part));
            default -> wrong(document, path, part, error.getInstanceNode());
        }
    }

    private static boolean isForThisCase(Error error) {
        return error.getKeyword().equals("propertyNames");
    }

    private static Collection<String> known(Error error, JsonNode part) {
        return isForThisCase(error) ? SchemaWords.texts(error.getSchemaNode().path("enum")) : SchemaWords.keys(part);
    }

    private static void missing(Document document, String path, JsonNode part, String key) {
        String allowed = SchemaWords.allowed(SchemaWords.property(part, key));
        String child = Document.child(path, key);
        document.refuseOnce(document.place(path), child, "is missing, add it: allowed is " + allowed);
    }

    private static void unknown(Document document, String path, String key, Collection<String> known) {
        String child = Document.child(path, key);
        document.refuseOnce(document.place(child), child, "is not known here" + NearestKey.hint(key, known));
    }

    private static void wrong(Document document, String path, JsonNode part, JsonNode value) {
        Place place = document.place(path);
        String found = place.found() + SchemaWords.kind(place.found(), value, part);
        String allowed = SchemaWords.allowed(part) + SchemaWords.remedy(value, part);
        document.refuseOnce(place, path, "is " + found + ", allowed is " + allowed);
    }

    private JsonNode at(NodePath location) {
        JsonNode found = source;
        for (Object element : elements(location)) {
            found = element instanceof Integer ? found.path("items") : SchemaWords.property(found, element.toString());
        }
        return found;
    }

    private static String path(NodePath location) {
        String path = "";
        for (Object element : elements(location)) {
            path = element instanceof Integer index
                    ? Document.child(path, index)
                    : Document.child(path, element.toString());
        }
        return path;
    }

    private static List<Object> elements(NodePath location) {
        return IntStream.range(0, location.getNameCount())
                .mapToObj(location::getElement)
                .toList();
    }
}
