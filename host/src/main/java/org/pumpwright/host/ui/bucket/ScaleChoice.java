package org.pumpwright.host.ui.bucket;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.bucket.ShopScale;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.ScaleModel;

/** Asks where the weights come from: typed by hand, or which scale, and on which port it is. JavaFX thread only. */
final class ScaleChoice {
    private static final int MOST_SCALES = 4;
    private static final int MOST_PORTS = 5;
    private static final int ANSWERS = 5;
    private static final Pattern TOO_LONG = Pattern.compile("\\S{12}");
    private static final int LONGEST_NAME = 22;

    private final Frame frame;
    private final BucketModel model;

    ScaleChoice(Frame frame, BucketModel model) {
        this.frame = frame;
        this.model = model;
    }

    void ask() {
        model.scales().find(this::show);
    }

    private void show(ScaleModel.Found found) {
        List<ShopScale> scales = found.scales().stream().limit(MOST_SCALES).toList();
        List<Action> answers = new ArrayList<>();
        answers.add(Action.of(frame.saying().text("ui.bucket.scale.typed"), model.scales()::type));
        for (ShopScale scale : scales) {
            answers.add(Action.of(name(scale, answers.size()), () -> plugged(scale, found.ports())));
        }
        ask(
                "ui.bucket.scale.ask",
                model.simulated() ? "ui.bucket.scale.text.simulated" : "ui.bucket.scale.text",
                lines(2, scales.stream().map(scale -> scale.settings().name())),
                answers);
    }

    /** The words of its file's name, each on a line of its own if need be; a number where one is too long for a key. */
    private ObservableValue<String> name(ShopScale scale, int number) {
        String words = String.valueOf(scale.file().getFileName())
                .replaceFirst("\\.yaml$", "")
                .replaceFirst("^scale-", "")
                .replaceAll("[-_]+", " ");
        boolean fits =
                words.length() <= LONGEST_NAME && !TOO_LONG.matcher(words).find();
        return fits ? new SimpleStringProperty(words) : frame.saying().text("ui.bucket.scale.numbered", number);
    }

    private void plugged(ShopScale scale, List<String> ports) {
        Optional<String> own = scale.settings().port();
        if (own.isPresent()) {
            choose(scale, own.get());
            return;
        }
        List<String> offered = ports.stream().limit(MOST_PORTS).toList();
        List<Action> answers = new ArrayList<>();
        offered.forEach(port -> answers.add(
                Action.of(new SimpleStringProperty(port.replaceFirst(".*/", "")), () -> choose(scale, port))));
        ask(
                "ui.bucket.port.ask",
                offered.isEmpty() ? "ui.bucket.port.none" : "ui.bucket.port.text",
                lines(1, offered.stream()),
                answers);
    }

    private void choose(ShopScale scale, String port) {
        model.scales().choose(new ScaleModel.OnLine(scale.settings(), port));
    }

    /** What the keys stand for, from this key on. */
    private static VBox lines(int first, Stream<String> names) {
        VBox lines = new VBox();
        names.forEach(name -> {
            Label line =
                    new Label("F%d  %s".formatted(first + lines.getChildren().size(), name));
            line.getStyleClass().addAll("stand-line", "data");
            line.setWrapText(true);
            lines.getChildren().add(line);
        });
        return lines;
    }

    private void ask(String title, String text, VBox lines, List<Action> answers) {
        List<Action> six = new ArrayList<>(answers);
        while (six.size() < ANSWERS) {
            six.add(Action.nothing());
        }
        six.add(Action.of(frame.saying().text("ui.cancel"), () -> {}));
        frame.ask(new Prompt(frame.saying().text(title), frame.saying().text(text), Optional.of(lines), six));
    }
}
