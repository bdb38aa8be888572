package org.pumpwright.host.ui.receive;

import static org.pumpwright.host.ui.receive.FormParts.heading;
import static org.pumpwright.host.ui.receive.FormParts.label;

import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.Label;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.VBox;
import org.pumpwright.host.claim.Photo.Shows;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.BigButton;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.work.ReceiveModel;

/** Pictures at intake: a file is dropped here or its place is given, and kept with the claim. JavaFX thread only. */
final class PhotoPart extends VBox {
    private final Frame frame;
    private final Saying saying;
    private final ReceiveModel model;

    PhotoPart(Frame frame, ReceiveModel model) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        getStyleClass().add("intake-photos");
        setId("intake-photos");
        Label standing = label("photo-standing", saying.text(model.photos().word()));
        BigButton add = new BigButton(saying.text("ui.receive.photo.add"), "");
        add.setId("add-photo");
        add.setOnAction(press -> ask(""));
        add.disableProperty().bind(Bindings.not(model.photos().possible()));
        getChildren().addAll(heading(saying.text("ui.receive.photo")), standing, add);
        setOnDragOver(drag -> {
            if (drag.getDragboard().hasFiles() && model.photos().possible().get()) {
                drag.acceptTransferModes(TransferMode.COPY);
            }
            drag.consume();
        });
        setOnDragDropped(drop -> {
            boolean file = drop.getDragboard().hasFiles();
            if (file) {
                ask(drop.getDragboard().getFiles().get(0).toString());
            }
            drop.setDropCompleted(file);
            drop.consume();
        });
    }

    /** Asks which file, who hands it in, and what can be seen on it; the last answers. */
    private void ask(String dropped) {
        Field file = new Field(saying.text("ui.claim.photo.file"), "photo-file");
        file.text().setText(dropped);
        Field person = new Field(saying.text("ui.receive.technician"), "photo-person");
        person.text().textProperty().bindBidirectional(model.technicians().nameProperty());
        BooleanBinding given = file.text()
                .textProperty()
                .isNotEmpty()
                .and(model.technicians().nameProperty().isNotEmpty());
        List<Action> answers = new ArrayList<>();
        for (Shows shows : List.of(Shows.PLATE, Shows.CONNECTOR, Shows.PORTS, Shows.WHOLE, Shows.DAMAGE)) {
            answers.add(
                    Action.of(saying.text(shows.key()), () -> keep(file.text().getText(), shows))
                            .when(given));
        }
        answers.add(Action.of(saying.text("ui.cancel"), () -> {}));
        frame.ask(new Prompt(
                saying.text("ui.claim.photo.ask"),
                saying.text("ui.claim.photo.text"),
                Optional.of(new VBox(file, person)),
                answers));
        file.text().requestFocus();
    }

    private void keep(String typed, Shows shows) {
        model.photos()
                .add(
                        Path.of(plain(typed)),
                        shows,
                        model.technicians().nameProperty().get());
    }

    /** File managers hand paths over in quotes or as addresses. */
    private static String plain(String pasted) {
        String bare = pasted.strip();
        if (bare.startsWith("file:")) {
            return Path.of(URI.create(bare)).toString();
        }
        return bare.replaceAll("^[\"']|[\"']$", "");
    }
}
