package org.pumpwright.host.ui.claim;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.ClaimView;

/** The pictures of a claim, small and in a row; a file that is dropped on it becomes one more. JavaFX thread only. */
final class PhotoStrip extends HBox {
    private static final double HIGH_EM = 3.6;

    private final Saying saying;

    PhotoStrip(Saying saying, Consumer<Path> dropped) {
        this.saying = saying;
        getStyleClass().add("photo-strip");
        setId("photo-strip");
        setMinHeight(USE_PREF_SIZE);
        setOnDragOver(drag -> {
            if (drag.getDragboard().hasFiles()) {
                drag.acceptTransferModes(TransferMode.COPY);
            }
            drag.consume();
        });
        setOnDragDropped(drop -> {
            boolean file = drop.getDragboard().hasFiles();
            if (file) {
                dropped.accept(drop.getDragboard().getFiles().get(0).toPath());
            }
            drop.setDropCompleted(file);
            drop.consume();
        });
    }

    void show(ClaimView view) {
        getChildren().clear();
        if (view.photos().isEmpty()) {
            Label none = new Label();
            none.getStyleClass().add("photo-none");
            none.setWrapText(true);
            none.textProperty().bind(saying.text("ui.claim.no_photos"));
            getChildren().add(none);
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
        getChildren().add(frame);
    }
}
