package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.app.bucket.LineScale;
import org.pumpwright.host.app.bucket.ScaleSettings;
import org.pumpwright.host.app.bucket.ShopScale;
import org.pumpwright.host.stand.StandException;

/** Where the weights of a bucket test come from: typed by hand, or a scale on a serial line. JavaFX thread only. */
public final class ScaleModel {
    private final Background background;
    private final Path folder;
    private final Stands.SerialOpener opener;
    private final Callable<List<String>> ports;
    private final ReadOnlyObjectWrapper<Optional<OnLine>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Word> shows = new ReadOnlyObjectWrapper<>(Word.NONE);

    /**
     * A scale and where it is plugged in.
     *
     * @param settings how it says its reading
     * @param port its serial port
     */
    public record OnLine(ScaleSettings settings, String port) {}

    /**
     * What there is to choose from.
     *
     * @param scales that the shop has described
     * @param ports of this machine
     */
    public record Found(List<ShopScale> scales, List<String> ports) {
        public Found {
            scales = List.copyOf(scales);
            ports = List.copyOf(ports);
        }
    }

    /**
     * Weights are typed until a scale is chosen.
     *
     * @param folder of the files of scales
     * @param opener opens serial ports
     * @param ports of this machine, looked for anew each time
     */
    public ScaleModel(Background background, Path folder, Stands.SerialOpener opener, Callable<List<String>> ports) {
        this.background = background;
        this.folder = folder;
        this.opener = opener;
        this.ports = ports;
    }

    /** The scale; empty while weights are typed. */
    public ReadOnlyObjectProperty<Optional<OnLine>> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    /** What the chosen scale showed when it was last read, or what is wrong with it. */
    public ReadOnlyObjectProperty<Word> showsProperty() {
        return shows.getReadOnlyProperty();
    }

    /** Finds scales and ports. */
    public void find(Consumer<Found> found) {
        background.run(() -> new Found(ShopScale.in(folder), ports.call()), found);
    }

    /** Weights are typed from now on. */
    public void type() {
        chosen.set(Optional.empty());
        shows.set(Word.NONE);
    }

    /** Takes a scale and reads it once, so that a wrong port shows before the work and not in it. */
    public void choose(OnLine scale) {
        chosen.set(Optional.of(scale));
        shows.set(Word.of("ui.bucket.scale.reading"));
        background.run(
                () -> {
                    try (LineScale line = opened(scale)) {
                        return line.steadyKilograms();
                    }
                },
                kilograms -> showed(scale, grams(kilograms * 1000)),
                failure -> showed(scale, Word.stored(String.valueOf(failure.getMessage()))));
    }

    private void showed(OnLine scale, Word what) {
        if (chosen.get().filter(scale::equals).isPresent()) {
            shows.set(what);
        }
    }

    /** A reading during the test. */
    void showed(double grams) {
        shows.set(grams(grams));
    }

    private static Word grams(double grams) {
        return Word.of("ui.bucket.scale.shows", String.format(Locale.ROOT, "%.1f", grams));
    }

    /**
     * Opens a scale for a test; on a worker thread.
     *
     * @throws OrderException when it can't be reached: what is wrong is the scale, not the stand
     */
    LineScale opened(OnLine scale) throws OrderException {
        try {
            return new LineScale(opener.open(scale.port(), scale.settings().baud()), scale.settings());
        } catch (StandException e) {
            throw new OrderException("the scale can't be reached. " + e.getMessage());
        }
    }
}
