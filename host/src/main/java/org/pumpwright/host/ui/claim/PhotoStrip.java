package org.pumpwright.host.ui.claim;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.ClaimView;

/** The pictures of a claim, small and in a row with what each shows; files that are dropped on it are added. JavaFX thread only. */
final class PhotoStrip extends ScrollPane {
    private static final double HIGH_EM = 3.6;

    private final Saying saying;
    private final HBox row = new HBox();

    PhotoStrip(Saying saying, Consumer<List<Path>> dropped) {
        this.saying = saying;
        getStyleClass().add("photo-strip");
        setId("photo-strip");
        setMinHeight(USE_PREF_SIZE);
        setVbarPolicy(ScrollBarPolicy.NEVER);
        row.getStyleClass().add("photo-row");
        setContent(row);
        takeDrops(this, dropped);
    }

    /** Lets files be dropped on a node. */
    static void takeDrops(Node node, Consumer<List<Path>> dropped) {
        node.setOnDragOver(drag -> {
            if (drag.getDragboard().hasFiles()) {
                drag.acceptTransferModes(TransferMode.COPY);
            }
            drag.consume();
        });
        node.setOnDragDropped(drop -> {
            boolean files = drop.getDragboard().hasFiles();
            if (files) {
                dropped.accept(drop.getDragboard().getFiles().stream()
                        .map(File::toPath)
                        .toList());
            }
            drop.setDropCompleted(files);
            drop.consume();
        });
    }

    void show(ClaimView view) {
        row.getChildren().clear();
        if (view.photos().isEmpty()) {
            Label none = new Label();
            none.getStyleClass().add("photo-none");
            none.textProperty().bind(saying.text("ui.claim.no_photos"));
            row.getChildren().add(none);
        }
        view.photos().forEach(photo -> add(photo, view));
    }

    private void add(Photo photo, ClaimView view) {
        VBox frame = new VBox();
        frame.getStyleClass().add("photo");
        Label shows = new Label();
        shows.getStyleClass().add("photo-name");
        shows.textProperty().bind(saying.text(photo.shows().key()));
        byte[] small = view.thumbnails().get(photo.sha256());
        if (small != null) {
            ImageView picture = new ImageView(new Image(new ByteArrayInputStream(small)));
            picture.setPreserveRatio(true);
            picture.setSmooth(true);
            picture.fitHeightProperty().bind(shows.fontProperty().map(font -> HIGH_EM * font.getSize()));
            frame.getChildren().add(picture);
        }
        frame.getChildren().add(shows);
        row.getChildren().add(frame);
    }
}
