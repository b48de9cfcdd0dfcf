package benchpace.web.request;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** An address as a QR code (ISO/IEC 18004), for the terminal and for pages. */
public final class QrCode {
    /** Light modules around the code that readers need. */
    static final int QUIET_ZONE = 4;

    private QrCode() { }

    /** True where a module is dark, without the quiet zone. */
    public static boolean[][] modules(String text) {
        try {
            BitMatrix matrix = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0,
                    Map.of(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, 0,
                            EncodeHintType.CHARACTER_SET, "UTF-8"));
            boolean[][] modules = new boolean[matrix.getHeight()][matrix.getWidth()];
            for (int y = 0; y < modules.length; y++) {
                for (int x = 0; x < modules[y].length; x++) {
                    modules[y][x] = matrix.get(x, y);
                }
            }
            return modules;
        } catch (WriterException e) {
            throw new IllegalArgumentException("too long for a QR code: " + text, e);
        }
    }

    /** Drawn with half blocks, two modules a character; light modules are drawn, as terminals are mostly dark. */
    public static String terminal(String text) {
        boolean[][] modules = modules(text);
        int side = modules.length + 2 * QUIET_ZONE;
        StringBuilder drawing = new StringBuilder();
        for (int y = 0; y < side; y += 2) {
            for (int x = 0; x < side; x++) {
                boolean upper = light(modules, x, y);
                boolean lower = y + 1 < side && light(modules, x, y + 1);
                drawing.append(upper ? lower ? '█' : '▀' : lower ? '▄' : ' ');
            }
            drawing.append('\n');
        }
        return drawing.toString();
    }

    private static boolean light(boolean[][] modules, int x, int y) {
        int column = x - QUIET_ZONE;
        int row = y - QUIET_ZONE;
        boolean inside = row >= 0 && row < modules.length && column >= 0 && column < modules.length;
        return !inside || !modules[row][column];
    }
}
