package org.pumpwright.host.claim.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.RefusedException;

class PictureTest {
    private static byte[] image(String format, int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    /** A JPEG whose camera wrote a time, in either order of bytes. */
    private static byte[] withTime(ByteOrder order, String time) throws IOException {
        ByteBuffer tiff = ByteBuffer.allocate(64).order(order);
        tiff.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
        tiff.putShort((short) 42).putInt(8);
        tiff.putShort((short) 1);
        tiff.putShort((short) 0x8769).putShort((short) 4).putInt(1).putInt(26).putInt(0);
        tiff.putShort((short) 1);
        tiff.putShort((short) 0x9003).putShort((short) 2).putInt(20).putInt(44);
        tiff.position(44);
        tiff.put(time.getBytes(StandardCharsets.US_ASCII));
        byte[] jpeg = image("jpg", 4, 3);
        ByteBuffer whole = ByteBuffer.allocate(jpeg.length + 4 + 6 + 64);
        whole.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) (2 + 6 + 64));
        whole.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
        return whole.put(jpeg, 2, jpeg.length - 2).array();
    }

    @Test
    void theCamerasTimeIsReadInBothOrdersOfBytes() throws Exception {
        for (ByteOrder order : new ByteOrder[] {ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN}) {
            Picture picture = Picture.of("a.jpg", withTime(order, "2026:03:01 07:08:09"));
            assertThat(picture.format()).isEqualTo(Photo.Format.JPEG);
            assertThat(picture.taken()).contains(LocalDateTime.of(2026, 3, 1, 7, 8, 9));
        }
        assertThat(Picture.of("a.jpg", image("jpg", 4, 3)).taken()).isEmpty();
        assertThat(Picture.of("a.jpg", withTime(ByteOrder.BIG_ENDIAN, "0000:00:00 00:00:00"))
                        .taken())
                .isEmpty();
    }

    @Test
    void aDamagedHeadCostsTheTimeAndNothingElse() throws Exception {
        byte[] whole = withTime(ByteOrder.LITTLE_ENDIAN, "2026:03:01 07:08:09");
        Random random = new Random(7);
        for (int i = 0; i < 5000; i++) {
            byte[] damaged = Arrays.copyOf(whole, 4 + random.nextInt(whole.length - 4));
            for (int j = 0; j < 4; j++) {
                damaged[3 + random.nextInt(damaged.length - 3)] = (byte) random.nextInt();
            }
            assertThat(Picture.of("a.jpg", damaged).format()).isEqualTo(Photo.Format.JPEG);
        }
    }

    @Test
    void whatIsNoPictureIsRefusedWhateverItsName() {
        assertThatThrownBy(() -> Picture.of("a.jpg", "<svg/>".getBytes(StandardCharsets.US_ASCII)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("neither JPEG nor PNG");
        assertThatThrownBy(() -> Picture.of("a.jpg", new byte[0])).hasMessageContaining("1 to 20971520");
    }

    @Test
    void aPictureThatWasChangedIsFoundOut(@TempDir Path folder) throws Exception {
        PhotoFolder photos = new PhotoFolder(folder);
        byte[] bytes = image("png", 5, 5);
        Photo photo = new Photo(
                photos.keep(bytes, Photo.Format.PNG),
                bytes.length,
                Photo.Format.PNG,
                Photo.Shows.PLATE,
                LocalDateTime.of(2026, 3, 2, 8, 0),
                Photo.TimeBy.FILE,
                "p.png",
                "Robin",
                OffsetDateTime.parse("2026-03-02T09:00:00-06:00"));
        assertThat(photos.read(photo)).isEqualTo(bytes);
        assertThat(photos.file(photo))
                .hasFileName(photo.sha256().hex() + ".png")
                .hasParent(folder.resolve(photo.sha256().hex().substring(0, 2)));
        Files.write(photos.file(photo), new byte[] {1});
        assertThatThrownBy(() -> photos.read(photo)).hasMessageContaining("was changed after it was put on record");
        Files.delete(photos.file(photo));
        assertThatThrownBy(() -> photos.read(photo)).hasMessageContaining("is not there");
    }

    @Test
    void aSmallPictureIsTheSameEveryTime() throws Exception {
        byte[] small = Thumbnail.png(image("jpg", 1200, 900));
        assertThat(small).isEqualTo(Thumbnail.png(image("jpg", 1200, 900)));
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(small));
        assertThat(read.getWidth()).isEqualTo(Thumbnail.LONGER_SIDE);
        assertThat(read.getHeight()).isEqualTo(360);
        assertThatThrownBy(() -> Thumbnail.png(new byte[] {1, 2, 3})).isInstanceOf(IOException.class);
    }
}
