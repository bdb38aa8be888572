package org.pumpwright.host.claim.photo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Makes pictures small enough for papers. Same bytes in, same bytes out. Thread-safe. */
public final class Thumbnail {
    /** Enough for a third of a page's width at 200 dots an inch. */
    public static final int LONGER_SIDE = 480;

    private static final long MOST_PIXELS = 200_000_000L;

    private Thumbnail() {}

    /**
     * A PNG whose longer side has at most {@link #LONGER_SIDE} pixels.
     *
     * @throws IOException when the bytes can't be read as a picture, or it is larger than any camera's
     */
    public static byte[] png(byte[] picture) throws IOException {
        BufferedImage small = scaled(read(picture));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(small, "png", out);
        return out.toByteArray();
    }

    /** Reads no more pixels than are needed: a picture that claims to be huge must not fill the memory. */
    private static BufferedImage read(byte[] picture) throws IOException {
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(picture))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException("the picture can't be read");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                if ((long) width * height > MOST_PIXELS) {
                    throw new IOException("the picture has %d x %d pixels, at most %d are read"
                            .formatted(width, height, MOST_PIXELS));
                }
                int every = Math.max(1, Math.max(width, height) / (2 * LONGER_SIDE));
                ImageReadParam wanted = reader.getDefaultReadParam();
                wanted.setSourceSubsampling(every, every, 0, 0);
                return reader.read(0, wanted);
            } catch (RuntimeException e) {
                throw new IOException("the picture can't be read: " + e, e);
            } finally {
                reader.dispose();
            }
        }
    }

    private static BufferedImage scaled(BufferedImage image) {
        double scale = Math.min(1, (double) LONGER_SIDE / Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D paper = small.createGraphics();
        paper.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        paper.drawImage(image, AffineTransform.getScaleInstance(scale, scale), null);
        paper.dispose();
        return small;
    }
}
