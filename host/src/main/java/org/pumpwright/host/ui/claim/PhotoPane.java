package org.pumpwright.host.ui.claim;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.pumpwright.host.claim.Photo.Shows;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.ChoiceButton;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.PhotoPicker;
import org.pumpwright.host.ui.work.Word;

/** Pictures are added to a claim, one after the other: which file, what it shows, and who hands it in. JavaFX thread only. */
final class PhotoPane implements Pane {
    private static final double PICTURE_EM = 9;

    private final Saying saying;
    private final ClaimModel model;
    private final PhotoPicker pictures;
    private final Runnable done;
    private final HBox node = new HBox();
    private final RowList list;
    private final Field person;
    private final ObjectProperty<Optional<Shows>> shows = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectBinding<Word> need;

    PhotoPane(Saying saying, ClaimModel model, Runnable done) {
        this.saying = saying;
        this.model = model;
        this.pictures = model.pictures();
        this.done = done;
        list = new RowList(saying, pictures.rows());
        list.setId("photo-files");
        VBox.setVgrow(list, Priority.ALWAYS);
        list.getSelectionModel().selectedIndexProperty().addListener((observed, old, now) -> look(now.intValue()));
        list.setOnMouseClicked(click -> {
            if (click.getClickCount() == 2) {
                pictures.take(list.getSelectionModel().getSelectedIndex());
            }
        });
        pictures.chosenProperty().addListener((observed, old, now) -> {
            if (now.isPresent() && pictures.line() >= 0) {
                list.getSelectionModel().clearAndSelect(pictures.line());
            }
        });
        person = new Field(saying.text("ui.claim.person"), "photo-person");
        person.text().textProperty().bindBidirectional(model.personProperty());
        need = Bindings.createObjectBinding(this::need, pictures.chosenProperty(), shows, model.personProperty());
        FormColumn form = new FormColumn(saying)
                .with(picture())
                .titled("ui.claim.photo.ask")
                .with(tags())
                .with(person)
                .saying(need, "claim-need");
        VBox files = new VBox(folder(), list);
        files.setMinHeight(0);
        HBox.setHgrow(files, Priority.ALWAYS);
        node.getStyleClass().add("claim-photos");
        node.setMinHeight(0);
        node.getChildren().addAll(files, form);
        PhotoStrip.takeDrops(node, pictures::dropped);
    }

    /** A picture shows at once when its line is chosen; a folder only when it is opened. */
    private void look(int line) {
        if (line >= 0 && line != pictures.line() && pictures.isPictureAt(line)) {
            pictures.take(line);
        }
    }

    private Label folder() {
        Label folder = new Label();
        folder.getStyleClass().add("photo-folder");
        folder.setWrapText(true);
        folder.setMinHeight(Label.USE_PREF_SIZE);
        folder.textProperty().bind(saying.text(pictures.headlineProperty()));
        return folder;
    }

    private StackPane picture() {
        ImageView view = new ImageView();
        view.setPreserveRatio(true);
        view.setSmooth(true);
        pictures.previewProperty()
                .addListener((observed, old, now) -> view.setImage(
                        now.map(ByteArrayInputStream::new).map(Image::new).orElse(null)));
        StackPane frame = new StackPane(view);
        frame.getStyleClass().add("photo-frame");
        frame.setMinHeight(0);
        view.fitHeightProperty().bind(frame.heightProperty().subtract(8));
        VBox.setVgrow(frame, Priority.ALWAYS);
        frame.setStyle("-fx-pref-height: %sem;".formatted(PICTURE_EM));
        return frame;
    }

    private GridPane tags() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("photo-tags");
        List<ColumnConstraints> columns = new ArrayList<>();
        Shows[] all = Shows.values();
        int wide = 3;
        for (int i = 0; i < wide; i++) {
            ColumnConstraints third = new ColumnConstraints();
            third.setPercentWidth(100.0 / wide);
            columns.add(third);
        }
        grid.getColumnConstraints().setAll(columns);
        for (int i = 0; i < all.length; i++) {
            Shows each = all[i];
            ChoiceButton button = new ChoiceButton(saying.text(each.key()), () -> shows.set(Optional.of(each)));
            button.setId("shows-" + each);
            button.chosenProperty()
                    .bind(shows.map(now -> now.filter(each::equals).isPresent()));
            grid.add(button, i % wide, i / wide);
        }
        grid.setMinHeight(GridPane.USE_PREF_SIZE);
        return grid;
    }

    private Word need() {
        if (pictures.chosenProperty().get().isEmpty()) {
            return Word.of("ui.claim.photo.need.file");
        }
        if (shows.get().isEmpty()) {
            return Word.of("ui.claim.photo.need.shows");
        }
        return model.personProperty().get().isBlank() ? Word.of("ui.claim.need.person") : Word.NONE;
    }

    /** Begins with what is in the folder, or with files that were dropped on the claim. */
    void begin(List<Path> dropped) {
        pictures.begin();
        if (!dropped.isEmpty()) {
            pictures.dropped(dropped);
        }
        proposeTag();
    }

    /** The first of the pictures that every claim needs and this one lacks. */
    private void proposeTag() {
        List<Shows> there = model.shownProperty()
                .get()
                .map(view -> view.photos().stream().map(photo -> photo.shows()).toList())
                .orElse(List.of());
        shows.set(List.of(Shows.PLATE, Shows.CONNECTOR, Shows.PORTS, Shows.WHOLE).stream()
                .filter(each -> !there.contains(each))
                .findFirst());
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public void focus() {
        list.requestFocus();
    }

    @Override
    public List<Action> actions() {
        return List.of(
                Action.of(saying.text("ui.claim.photo.add"), this::add)
                        .when(need.isEqualTo(Word.NONE).and(model.busyProperty().not()))
                        .asNext(),
                Action.of(
                                saying.text("ui.claim.photo.into"),
                                () -> pictures.take(list.getSelectionModel().getSelectedIndex()))
                        .when(Bindings.createBooleanBinding(
                                () -> pictures.isFolderAt(
                                        list.getSelectionModel().getSelectedIndex()),
                                list.getSelectionModel().selectedIndexProperty(),
                                pictures.headlineProperty())),
                Action.of(saying.text("ui.claim.photo.up"), pictures::up),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.claim.photo.done"), done));
    }

    private void add() {
        Path file = pictures.chosenProperty().get().orElseThrow();
        Shows what = shows.get().orElseThrow();
        model.deeds().photo(file, what, () -> {
            pictures.added(what);
            proposeTag();
        });
    }
}
