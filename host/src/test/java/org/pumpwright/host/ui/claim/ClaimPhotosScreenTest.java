package org.pumpwright.host.ui.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.claim.Photo;

/** Pictures are found in a folder or dropped, and added one after the other with what each shows. */
final class ClaimPhotosScreenTest extends DeskWindow {
    private void lookIn(Path folder, int lines) throws Exception {
        onScreen(() -> {
            model.pictures().lookIn(folder);
            return true;
        });
        until(() -> model.pictures().rows().size() == lines);
    }

    @Test
    void severalPicturesOfAFolderAreAddedEachWithItsTag() throws Exception {
        openExample();
        photo("first");
        photo("second");
        Files.writeString(records.resolve("pictures/list.txt"), "no picture");
        press(KeyCode.F2);
        lookIn(records.resolve("pictures"), 2);
        assertThat(off("action-1")).isTrue();
        select("photo-files", 0);
        until(() -> model.pictures().previewProperty().get().isPresent());
        type("photo-person", "Kim Clerk");
        looksGood("claim-photo");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().photos().size() == 1);
        free();
        fire("shows-DAMAGE");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().photos().size() == 2);
        free();
        assertThat(file().photos().stream().map(Photo::shows)).containsExactly(Photo.Shows.PLATE, Photo.Shows.DAMAGE);
        looksGood("claim-photos-added");
        press(KeyCode.F6);
        looksGood("claim-with-photos");
    }

    @Test
    void droppedFilesAreOfferedInTurn() throws Exception {
        openExample();
        Path picture = photo("dropped");
        Path text = Files.writeString(records.resolve("page.txt"), "no picture");
        press(KeyCode.F2);
        onScreen(() -> {
            model.pictures().dropped(List.of(text, picture));
            return true;
        });
        until(() -> model.pictures().rows().size() == 1);
        select("photo-files", 0);
        type("photo-person", "Kim Clerk");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().photos().size() == 1);
        assertThat(file().photos().get(0).fileName()).isEqualTo("dropped.png");
    }

    @Test
    void aFolderIsOpenedAndLeftAgain() throws Exception {
        openExample();
        photo("one");
        press(KeyCode.F2);
        onScreen(() -> {
            model.pictures().lookIn(records);
            return true;
        });
        until(() -> model.pictures().rows().stream()
                .anyMatch(row -> window.saying().now(row.name()).equals("pictures")));
        int line = onScreen(() -> model.pictures().rows().stream()
                .map(row -> window.saying().now(row.name()))
                .toList()
                .indexOf("pictures"));
        select("photo-files", line);
        assertThat(off("action-2")).isFalse();
        press(KeyCode.F2);
        until(() -> model.pictures().rows().size() == 1
                && window.saying().now(model.pictures().rows().get(0).name()).equals("one.png"));
        press(KeyCode.F3);
        until(() -> model.pictures().rows().size() > 1
                || !window.saying().now(model.pictures().rows().get(0).name()).equals("one.png"));
    }
}
