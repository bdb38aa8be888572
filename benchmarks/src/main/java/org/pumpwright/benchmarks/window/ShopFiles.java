package org.pumpwright.benchmarks.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A copy of the project's data files in which one plan is another: the plan that the window proposes first. Thread-safe. */
final class ShopFiles {
    private static final String PROPOSED = "full-12v-pump";

    private ShopFiles() {}

    /**
     * Copies them.
     *
     * @param plan text of the plan, whose first line that begins with {@code plan:} is replaced
     * @return the copy, in the folder
     */
    static Path with(Path fixtures, Path folder, String plan) throws IOException {
        Path copy = folder.resolve("fixtures");
        List<Path> all;
        try (Stream<Path> walk = Files.walk(fixtures)) {
            all = walk.toList();
        }
        for (Path each : all) {
            Path to = copy.resolve(fixtures.relativize(each).toString());
            if (Files.isDirectory(each)) {
                Files.createDirectories(to);
            } else {
                Files.copy(each, to);
            }
        }
        String named = plan.replaceFirst("(?m)^plan:.*$", "plan: " + PROPOSED);
        Files.writeString(copy.resolve("plans").resolve(PROPOSED + ".yaml"), named);
        return copy;
    }
}
