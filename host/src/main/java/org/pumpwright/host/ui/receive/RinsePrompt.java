package org.pumpwright.host.ui.receive;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.StringProperty;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.work.ReceiveModel;
import org.pumpwright.host.ui.work.Rinsing;

/** Asks whether a unit is clean; one that is not gets onto the stand only when somebody answers for it by name. JavaFX thread only. */
final class RinsePrompt {
    private final Frame frame;
    private final Saying saying;
    private final ReceiveModel model;

    RinsePrompt(Frame frame, ReceiveModel model) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
    }

    /** It is clean, or that was a mistake. */
    void flipClean() {
        if (model.rinsing().stateProperty().get() == Rinsing.State.CLEAN) {
            model.rinsing().unsay();
        } else {
            model.rinsing().clean();
        }
    }

    /**
     * Asks whether it is clean.
     *
     * @param answered is done when the unit may be taken in
     */
    void ask(Runnable answered) {
        frame.ask(Prompt.of(
                saying.text("ui.receive.rinse.ask"),
                saying.text("ui.receive.rinse.text"),
                Action.of(saying.text("ui.receive.rinse.yes"), () -> {
                            model.rinsing().clean();
                            answered.run();
                        })
                        .asNext(),
                Action.of(saying.text("ui.receive.rinse.no"), () -> askWhoAnswers(answered)),
                Action.nothing(),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.cancel"), () -> {})));
    }

    void askWhoAnswers() {
        if (model.rinsing().stateProperty().get() == Rinsing.State.ANSWERED_FOR) {
            model.rinsing().unsay();
        } else {
            askWhoAnswers(() -> {});
        }
    }

    private void askWhoAnswers(Runnable answered) {
        Field person = new Field(saying.text("ui.receive.rinse.person"), "rinse-person");
        person.text().setText(model.technicians().nameProperty().get());
        Field reason = new Field(saying.text("ui.receive.rinse.reason"), "rinse-reason");
        StringProperty name = person.text().textProperty();
        StringProperty why = reason.text().textProperty();
        BooleanBinding given = Bindings.createBooleanBinding(
                () -> !name.get().isBlank() && !why.get().isBlank(), name, why);
        VBox form = new VBox(person, reason);
        form.getStyleClass().add("prompt-form");
        frame.ask(new Prompt(
                saying.text("ui.receive.rinse.who"),
                saying.text("ui.receive.rinse.danger"),
                Optional.of(form),
                List.of(
                        Action.of(saying.text("ui.receive.rinse.sign"), () -> {
                                    model.rinsing().answer(name.get(), why.get());
                                    answered.run();
                                })
                                .when(given),
                        Action.nothing(),
                        Action.nothing(),
                        Action.nothing(),
                        Action.nothing(),
                        Action.of(saying.text("ui.cancel"), () -> {}))));
        reason.text().requestFocus();
    }
}
