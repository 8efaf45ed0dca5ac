package org.potlife.web;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/**
 * A QR code (ISO/IEC 18004) as the path of an SVG, one unit per module. A quarter of the code may
 * be lost: labels on ink buckets get smeared.
 *
 * @param size modules along one side, quiet zone of four modules included
 * @param path the dark modules, as the {@code d} of a path
 */
public record QrCode(int size, String path) {

  private static final Map<EncodeHintType, Object> HINTS =
      Map.of(
          EncodeHintType.ERROR_CORRECTION,
          ErrorCorrectionLevel.Q,
          EncodeHintType.MARGIN,
          4,
          EncodeHintType.CHARACTER_SET,
          "UTF-8");

  /**
   * The code of a text.
   *
   * @throws IllegalArgumentException if the text is empty or longer than a code can hold
   */
  public static QrCode of(String text) {
    BitMatrix modules;
    try {
      // no size asked for: one pixel per module
      modules = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, HINTS);
    } catch (WriterException e) {
      throw new IllegalArgumentException("no QR code holds a text of " + text.length(), e);
    }
    return new QrCode(modules.getWidth(), path(modules));
  }

  private static String path(BitMatrix modules) {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      int x = 0;
      while (x < modules.getWidth()) {
        int end = x;
        while (end < modules.getWidth() && modules.get(end, y)) {
          end++;
        }
        if (end > x) {
          path.append("M%d %dh%dv1h-%dz".formatted(x, y, end - x, end - x));
        }
        x = end + 1;
      }
    }
    return path.toString();
  }
}
