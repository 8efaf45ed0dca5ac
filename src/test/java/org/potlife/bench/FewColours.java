package org.potlife.bench;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * A picture of a page in the 256 colours that it has most of: screens are flat, so few are more.
 */
final class FewColours {

  private static final int MOST = 256;

  private FewColours() {}

  static byte[] of(byte[] png) throws IOException {
    BufferedImage full = ImageIO.read(new ByteArrayInputStream(png));
    int width = full.getWidth();
    int height = full.getHeight();
    int[] pixels = full.getRGB(0, 0, width, height, null, 0, width);
    Map<Integer, Integer> count = new HashMap<>();
    for (int pixel : pixels) {
      count.merge(pixel & 0xffffff, 1, Integer::sum);
    }
    List<Integer> palette =
        count.entrySet().stream()
            .sorted(Map.Entry.<Integer, Integer>comparingByValue().reversed())
            .limit(MOST)
            .map(Map.Entry::getKey)
            .toList();
    BufferedImage few =
        new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model(palette));
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int i = 0; i < pixels.length; i++) {
      int index = nearest.computeIfAbsent(pixels[i] & 0xffffff, colour -> near(colour, palette));
      few.getRaster().setSample(i % width, i / width, 0, index);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(few, "png", out);
    return out.toByteArray();
  }

  private static IndexColorModel model(List<Integer> palette) {
    int[] colours = palette.stream().mapToInt(Integer::intValue).toArray();
    return new IndexColorModel(
        8, colours.length, colours, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
  }

  private static int near(int colour, List<Integer> palette) {
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < palette.size() && least > 0; i++) {
      int other = palette.get(i);
      int away = 0;
      for (int shift = 0; shift <= 16; shift += 8) {
        int step = (colour >> shift & 255) - (other >> shift & 255);
        away += step * step;
      }
      if (away < least) {
        least = away;
        best = i;
      }
    }
    return best;
  }
}
