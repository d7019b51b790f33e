package cornerbook.app.picture;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * A QR code (ISO/IEC 18004) as a picture: error correction level M, so that dirt on 15 % of it does no harm, and the
 * quiet zone of four modules that the standard asks for.
 */
public final class QrCode {
    private static final int QUIET_MODULES = 4;

    private QrCode() {}

    /**
     * One rectangle for each run of dark modules in a row.
     *
     * @param description for those who do not see it
     */
    public static String svg(String text, String description) {
        var modules = encode(text);
        var path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            int x = 0;
            while (x < modules.getWidth()) {
                int start = x;
                while (x < modules.getWidth() && modules.get(x, y)) {
                    x++;
                }
                if (x > start) {
                    path.append("M%s %sh%sv1h-%sz".formatted(start, y, x - start, x - start));
                }
                x++;
            }
        }
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %s %s\" role=\"img\" aria-label=\"%s\"><path d=\"%s\" fill=\"#000000\"/></svg>"
                .formatted(modules.getWidth(), modules.getHeight(), Svg.escape(description), path);
    }

    private static BitMatrix encode(String text) {
        try {
            return new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.MARGIN,
                                    QUIET_MODULES,
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M,
                                    EncodeHintType.CHARACTER_SET,
                                    StandardCharsets.UTF_8.name()));
        } catch (WriterException e) {
            throw new IllegalArgumentException("The text %s is too long for a QR code.".formatted(text), e);
        }
    }
}
