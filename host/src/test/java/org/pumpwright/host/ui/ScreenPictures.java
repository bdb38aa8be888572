package org.pumpwright.host.ui;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.text.Language;

/**
 * Shows a window in both languages, both lights and both sizes, and looks for clipped text each time. It leaves pictures of both lights in
 * English and of the light in Spanish in {@code target/pictures}. Every screen's test ends with it.
 */
public final class ScreenPictures {
    private ScreenPictures() {}

    /**
     * Takes the pictures.
     *
     * @param name of the screen and its state, as in {@code stand-checked}
     * @return one line for each clipped text, with the picture that it is on
     */
    public static List<String> of(WindowTest test, BenchWindow window, String name) throws Exception {
        List<String> clipped = new ArrayList<>();
        for (int[] size : WindowTest.SIZES) {
            for (Language language : Language.values()) {
                for (boolean dark : new boolean[] {false, true}) {
                    WindowTest.onScreen(() -> {
                        window.saying().languageProperty().set(language);
                        window.darkProperty().set(dark);
                        return true;
                    });
                    test.show(window.scene(), size[0], size[1]);
                    boolean inTheDark = dark;
                    String picture = "%s-%d-%s-%s".formatted(name, size[0], language.code(), dark ? "dark" : "light");
                    clipped.addAll(WindowTest.onScreen(() -> {
                        List<String> found = ClippedTexts.under(window.scene().getRoot());
                        if (pictured(language, inTheDark)) {
                            Picture.take(window.scene(), picture);
                        }
                        return found.stream().map(each -> picture + ": " + each).toList();
                    }));
                }
            }
        }
        return clipped;
    }

    /** The dark in Spanish is the layout of the one and the colours of the other: it is checked, and no picture is written. */
    private static boolean pictured(Language language, boolean dark) {
        return language == Language.EN || !dark;
    }
}
