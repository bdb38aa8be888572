package org.pumpwright.host.ui.receive;

import static org.pumpwright.host.ui.receive.FormParts.label;
import static org.pumpwright.host.ui.receive.FormParts.signed;

import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.ReceiveModel;
import org.pumpwright.host.ui.work.Word;

/** What comes of what was said: the plan at the left, what is still missing at the right. JavaFX thread only. */
final class OutcomeBand extends HBox {
    private final Saying saying;
    private final ReceiveModel model;

    OutcomeBand(Saying saying, ReceiveModel model) {
        this.saying = saying;
        this.model = model;
        getStyleClass().add("outcome");
        setMinHeight(Region.USE_PREF_SIZE);
        ObservableValue<Word> planWord = model.unit()
                .planProperty()
                .map(found -> found.map(each -> Word.of("ui.receive.plan", each.title()))
                        .orElse(Word.of("ui.receive.plan.none")));
        Label reason = label("plan-reason", saying.text(model.unit().reasonProperty()));
        reason.getStyleClass().add("data");
        VBox proposed = new VBox(label("plan-name", saying.text(planWord)), reason);
        proposed.getStyleClass().add("proposed");
        HBox.setHgrow(proposed, Priority.ALWAYS);
        Sign sign = new Sign(Mark.WATCH);
        sign.markProperty().bind(model.completeProperty().map(complete -> complete ? Mark.GOOD : Mark.WATCH));
        HBox lack = signed(sign, label("missing", missing()), "lack");
        getChildren().addAll(proposed, lack);
    }

    private StringBinding missing() {
        return Bindings.createStringBinding(
                () -> {
                    if (model.missing().isEmpty()) {
                        return saying.now(model.rinsing().word());
                    }
                    String all = model.missing().stream().map(saying::now).collect(Collectors.joining(", "));
                    return saying.now(Word.of("ui.receive.missing", all));
                },
                model.missing(),
                model.rinsing().stateProperty(),
                saying.languageProperty());
    }
}
