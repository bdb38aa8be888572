package org.pumpwright.host.ui.work;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.photo.Thumbnail;

/**
 * Finds pictures that may be added to a claim: those of a folder, the newest first, or those that were dropped on the window. It stands in
 * the window, for a dialog of the system's own would lie over STOP. JavaFX thread only.
 */
public final class PhotoPicker {
    private static final Pattern PICTURE = Pattern.compile(".*\\.(?:jpe?g|png)", Pattern.CASE_INSENSITIVE);
    private static final int MOST = 500;
    private static final double KILOBYTE = 1024;

    private final Background background;
    private final ZoneId zone;
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ObservableList<Row> rowsShown = FXCollections.unmodifiableObservableList(rows);
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Optional<Path>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<byte[]>> preview = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final Map<Path, Photo.Shows> added = new HashMap<>();
    private List<Item> items = List.of();
    private Path folder = Path.of(System.getProperty("user.home", "."));

    /** A line: a folder to look into, or a picture. */
    private record Item(Path path, boolean folder, LocalDateTime at, long bytes) {
        static Item of(Path path, ZoneId zone) throws IOException {
            FileTime time = Files.getLastModifiedTime(path);
            return new Item(
                    path,
                    Files.isDirectory(path),
                    LocalDateTime.ofInstant(time.toInstant(), zone).truncatedTo(ChronoUnit.MINUTES),
                    Files.size(path));
        }
    }

    /** @param zone the shop's, for the times of files */
    PhotoPicker(Background background, ZoneId zone) {
        this.background = background;
        this.zone = zone;
    }

    /** A claim is looked at anew: nothing was added yet. Looks again where pictures were found last. */
    public void begin() {
        added.clear();
        lookIn(folder);
    }

    /** Looks into a folder. */
    public void lookIn(Path where) {
        background.run(
                () -> listed(where),
                found -> {
                    folder = where;
                    show(found, Word.of("ui.claim.photo.folder", where.toString()));
                },
                failure -> background.trouble(Trouble.named("folder", where.toString())));
    }

    /** Looks into the folder above. */
    public void up() {
        Path above = folder.toAbsolutePath().getParent();
        if (above != null) {
            lookIn(above);
        }
    }

    private List<Item> listed(Path where) throws IOException {
        List<Item> found = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(where, PhotoPicker::shown)) {
            for (Path each : all) {
                if (found.size() < MOST) {
                    found.add(Item.of(each, zone));
                }
            }
        }
        found.sort(Comparator.comparing(Item::folder)
                .thenComparing(Item::at, Comparator.reverseOrder())
                .thenComparing(Item::path));
        return found;
    }

    private static boolean shown(Path path) throws IOException {
        boolean hidden = String.valueOf(path.getFileName()).startsWith(".");
        return !hidden && Files.isReadable(path) && (Files.isDirectory(path) || isPicture(path));
    }

    /** Whether a file's name is that of a picture. */
    public static boolean isPicture(Path file) {
        return PICTURE.matcher(String.valueOf(file.getFileName())).matches();
    }

    /** Takes files that were dropped on the window; what is no picture is left out. */
    public void dropped(List<Path> files) {
        background.run(
                () -> {
                    List<Item> found = new ArrayList<>();
                    for (Path file : files) {
                        if (isPicture(file)) {
                            found.add(Item.of(file, zone));
                        }
                    }
                    return found;
                },
                found -> show(found, Word.of("ui.claim.photo.dropped", found.size())));
    }

    private void show(List<Item> found, Word said) {
        items = List.copyOf(found);
        headline.set(said);
        rows.setAll(items.stream().map(this::row).toList());
        choose(Optional.empty());
    }

    private Row row(Item item) {
        Word name = Word.asIs(String.valueOf(item.path().getFileName()));
        if (item.folder()) {
            return new Row(name, Mark.UNKNOWN, Word.of("ui.claim.photo.is_folder"), Word.NONE);
        }
        Word facts =
                Word.asIs(String.format(Locale.ROOT, "%s   %.0f kB", day(item), Math.ceil(item.bytes() / KILOBYTE)));
        Photo.Shows shows = added.get(item.path());
        return shows == null
                ? new Row(name, Mark.UNKNOWN, facts, Word.NONE)
                : new Row(name, Mark.GOOD, facts, Word.of("ui.claim.photo.added", Word.of(shows.key())));
    }

    private static String day(Item item) {
        return item.at().toString().replace('T', ' ');
    }

    /** Chooses the picture in a line, or looks into the folder there. */
    public void take(int line) {
        if (line < 0 || line >= items.size()) {
            return;
        }
        Item item = items.get(line);
        if (item.folder()) {
            lookIn(item.path());
        } else {
            choose(Optional.of(item.path()));
        }
    }

    /** Whether a picture stands in a line. */
    public boolean isPictureAt(int line) {
        return line >= 0 && line < items.size() && !items.get(line).folder();
    }

    /** Whether a folder stands in a line. */
    public boolean isFolderAt(int line) {
        return line >= 0 && line < items.size() && items.get(line).folder();
    }

    private void choose(Optional<Path> file) {
        chosen.set(file);
        preview.set(Optional.empty());
        file.ifPresent(path -> background.run(
                () -> Thumbnail.png(Files.readAllBytes(path)),
                small -> preview.set(chosen.get().filter(path::equals).map(still -> small)),
                failure -> background.trouble(Trouble.named("picture", path.toString()))));
    }

    /** The chosen picture was added; the next one that was not is chosen. */
    public void added(Photo.Shows shows) {
        chosen.get().ifPresent(file -> {
            added.put(file, shows);
            rows.setAll(items.stream().map(this::row).toList());
        });
        choose(items.stream()
                .filter(item -> !item.folder() && !added.containsKey(item.path()))
                .map(Item::path)
                .findFirst());
    }

    /** In which line the chosen picture stands; -1 when none is chosen. */
    public int line() {
        return chosen.get()
                .map(file -> items.stream().map(Item::path).toList().indexOf(file))
                .orElse(-1);
    }

    /** Folders and pictures, as lines. */
    public ObservableList<Row> rows() {
        return rowsShown;
    }

    /** Where these are. */
    public ReadOnlyObjectProperty<Word> headlineProperty() {
        return headline.getReadOnlyProperty();
    }

    /** The picture that is to be added. */
    public ReadOnlyObjectProperty<Optional<Path>> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    /** The same, small, as PNG; empty until it was read. */
    public ReadOnlyObjectProperty<Optional<byte[]>> previewProperty() {
        return preview.getReadOnlyProperty();
    }
}
