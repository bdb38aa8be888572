package org.pumpwright.host.datafile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * One value of a file that has passed its schema, so that its type and its required keys can be relied on. What a schema
 * cannot say is checked by the reader and noted with {@link #refuse}. Confined to the reading thread.
 */
public final class Node {
    private final Document document;
    private final String path;
    private final JsonNode value;

    Node(Document document, String path, JsonNode value) {
        this.document = document;
        this.path = path;
        this.value = value;
    }

    /**
     * The value of a key.
     *
     * @throws IllegalStateException when it is absent, which the schema should have refused
     */
    public Node at(String key) {
        return find(key).orElseThrow(() -> new IllegalStateException("the schema lets " + key + " be left out"));
    }

    /** The value of a key that may be left out. */
    public Optional<Node> find(String key) {
        return value.has(key)
                ? Optional.of(new Node(document, Document.child(path, key), value.get(key)))
                : Optional.empty();
    }

    /** The names of the keys, in the order of the file. */
    public List<String> keys() {
        return List.copyOf(value.propertyNames());
    }

    /** The values of a list. */
    public List<Node> items() {
        List<Node> items = new ArrayList<>();
        for (JsonNode item : value) {
            items.add(new Node(document, Document.child(path, items.size()), item));
        }
        return items;
    }

    public double number() {
        return value.doubleValue();
    }

    public double number(String key) {
        return at(key).number();
    }

    public int whole(String key) {
        return at(key).value.intValue();
    }

    public String text() {
        return value.stringValue();
    }

    public String text(String key) {
        return at(key).text();
    }

    public boolean flag(String key) {
        return at(key).value.booleanValue();
    }

    /** The value as it stands in the file, for messages. */
    public String found() {
        return document.place(path).found();
    }

    /** The line of the value's key, or of the value itself in a list. */
    public int line() {
        return document.place(path).line();
    }

    /**
     * Notes that this value will not do; the file is then refused once all of it has been read.
     *
     * @param says what is wrong and what is allowed, written to follow the key
     */
    public void refuse(String says) {
        document.refuse(path, says);
    }
}
