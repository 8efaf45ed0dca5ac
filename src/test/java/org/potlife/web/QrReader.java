package org.potlife.web;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a code as a camera would: from pixels, not from modules. */
final class QrReader {

  private static final int PIXELS_PER_MODULE = 8;
  private static final int WHITE = 0xffffff;
  private static final Pattern BAR = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\3z");

  private QrReader() {}

  static String read(int size, String path) throws ReaderException {
    int side = size * PIXELS_PER_MODULE;
    int[] pixels = new int[side * side];
    Arrays.fill(pixels, WHITE);
    Matcher bar = BAR.matcher(path);
    while (bar.find()) {
      int left = Integer.parseInt(bar.group(1)) * PIXELS_PER_MODULE;
      int top = Integer.parseInt(bar.group(2)) * PIXELS_PER_MODULE;
      int right = left + Integer.parseInt(bar.group(3)) * PIXELS_PER_MODULE;
      for (int y = top; y < top + PIXELS_PER_MODULE; y++) {
        Arrays.fill(pixels, y * side + left, y * side + right, 0);
      }
    }
    BinaryBitmap image =
        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
    return new QRCodeReader()
        .decode(image, Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE))
        .getText();
  }
}
