package org.pumpwright.host.datafile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

/** One file while it is read: its values, where each stands, and what is wrong so far. Confined to the reading thread. */
final class Document {
    private static final Place WHOLE_FILE = new Place(0, 0, "");

    private final String file;
    private final Map<String, Place> places = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private JsonNode root = MissingNode.getInstance();

    Document(String file) {
        this.file = file;
    }

    static String child(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    static String child(String path, int index) {
        return path + "[" + index + "]";
    }

    String file() {
        return file;
    }

    JsonNode root() {
        return root;
    }

    void root(JsonNode node) {
        root = node;
    }

    void place(String path, Place place) {
        places.putIfAbsent(path, place);
    }

    Place place(String path) {
        return places.getOrDefault(path, WHOLE_FILE);
    }

    /** Notes a problem with the value at a path. */
    void refuse(String path, String says) {
        refuse(place(path), path, says);
    }

    void refuse(Place place, String path, String says) {
        problems.add(new Problem(file, place.line(), place.column(), path, says));
    }

    /** Notes a problem unless one is known already for this path in this line. */
    void refuseOnce(Place place, String path, String says) {
        boolean known =
                problems.stream().anyMatch(problem -> problem.key().equals(path) && problem.line() == place.line());
        if (!known) {
            refuse(place, path, says);
        }
    }

    /** Throws when anything is wrong so far. */
    void check() throws DataFileException {
        if (!problems.isEmpty()) {
            problems.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
            throw new DataFileException(problems);
        }
    }
}
