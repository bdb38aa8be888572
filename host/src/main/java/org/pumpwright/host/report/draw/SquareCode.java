package org.pumpwright.host.report.draw;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** Words as a square code (QR code, ISO/IEC 18004) that still reads with 15 % of it spoilt. Thread-safe. */
public final class SquareCode {
    /** The standard asks for four; two do where the paper around the code is white. */
    private static final int QUIET_ZONE = 2;

    private SquareCode() {}

    /**
     * The code, one unit a square, its quiet zone with it.
     *
     * @param words plain ASCII
     * @param spoken what it is, for those who cannot see it
     * @throws IllegalArgumentException if it is more than a square code holds
     */
    public static Tag draw(String words, String spoken) {
        try {
            BitMatrix bits = new QRCodeWriter()
                    .encode(
                            words,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M,
                                    EncodeHintType.MARGIN,
                                    QUIET_ZONE));
            return BarCode.drawing(bits, bits.getHeight(), "square-code", spoken);
        } catch (WriterException e) {
            throw new IllegalArgumentException("the square code can't hold " + words.length() + " characters", e);
        }
    }
}
