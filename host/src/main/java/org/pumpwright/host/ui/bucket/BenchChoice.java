package org.pumpwright.host.ui.bucket;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.bucket.BucketBench;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.work.BucketModel;

/** Asks which bench the bucket is weighed on. JavaFX thread only. */
final class BenchChoice {
    private static final int MOST = 5;

    private final Frame frame;
    private final BucketModel model;

    BenchChoice(Frame frame, BucketModel model) {
        this.frame = frame;
        this.model = model;
    }

    void ask() {
        model.setUp().findBenches(this::show);
    }

    private void show(List<BucketBench> benches) {
        List<Action> answers = new ArrayList<>();
        VBox names = new VBox();
        benches.stream().limit(MOST).forEach(each -> {
            answers.add(Action.of(
                    new SimpleStringProperty(each.sheet().meter().serial()),
                    () -> model.setUp().choose(each)));
            Label line = new Label("F%d  %s".formatted(answers.size(), each.name()));
            line.getStyleClass().addAll("stand-line", "data");
            names.getChildren().add(line);
        });
        while (answers.size() < MOST) {
            answers.add(Action.nothing());
        }
        answers.add(Action.of(frame.saying().text("ui.cancel"), () -> {}));
        frame.ask(new Prompt(
                frame.saying().text("ui.bucket.bench.ask"),
                frame.saying().text("ui.bucket.bench.text"),
                Optional.of(names),
                answers));
    }
}
