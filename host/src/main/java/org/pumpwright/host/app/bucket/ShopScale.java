package org.pumpwright.host.app.bucket;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.datafile.DataFileException;

/**
 * A scale that the shop has described. Thread-safe.
 *
 * @param file its file
 * @param settings what the file says
 */
public record ShopScale(Path file, ScaleSettings settings) {
    /**
     * Every scale of a folder. Files of other things lie there too, so one that is no scale is left out.
     *
     * @throws OrderException when the folder can't be read
     */
    public static List<ShopScale> in(Path folder) throws OrderException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<ShopScale> scales = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .forEach(file -> read(file).ifPresent(scales::add));
        } catch (IOException e) {
            throw new OrderException(
                    "%s can't be read: %s. Check the folder's rights.".formatted(folder, e.getMessage()));
        }
        return scales;
    }

    private static Optional<ShopScale> read(Path file) {
        try {
            return Optional.of(new ShopScale(file, ScaleSettings.read(file)));
        } catch (DataFileException e) {
            return Optional.empty();
        }
    }
}
