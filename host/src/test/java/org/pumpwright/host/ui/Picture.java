package org.pumpwright.host.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** Writes what a scene shows into {@code target/pictures}. JavaFX thread only. */
public final class Picture {
    private static Path folder = Path.of("target", "pictures");

    private Picture() {}

    /** Has pictures written into another folder. */
    static void into(Path other) {
        folder = other;
    }

    /** Takes a picture under this name. */
    public static Path take(Scene scene, String name) throws IOException {
        WritableImage shown = scene.snapshot(null);
        int width = (int) shown.getWidth();
        int height = (int) shown.getHeight();
        int[] pixels = new int[width * height];
        shown.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, width, height, pixels, 0, width);
        Files.createDirectories(folder);
        Path file = folder.resolve(name + ".png");
        ImageIO.write(image, "png", file.toFile());
        return file;
    }
}
