package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.potlife.ink.InkPerPiece;
import org.potlife.order.Colour;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet.RunLine;

/**
 * What one station takes of an ink on one piece, with where the figure is from.
 *
 * @param station station on the press, from 1
 * @param inWords the figure's origin, as a person can follow it
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record PerPiece(int station, @JsonUnwrapped InkPerPiece ink, String inWords) {

  /** All stations of a run with this ink; empty when its order or ink is not known any more. */
  static List<PerPiece> of(PlanIndex plan, RunLine run, String ink) {
    List<PerPiece> stations = new ArrayList<>();
    Print print = plan.findPrint(run).orElse(null);
    if (print == null || plan.findInk(ink).isEmpty()) {
      return stations;
    }
    for (int i = 0; i < print.colours().size(); i++) {
      Colour colour = print.colours().get(i);
      if (colour.ink().equals(ink)) {
        InkPerPiece perPiece = plan.gramsPerPiece().of(print, colour);
        stations.add(new PerPiece(i + 1, perPiece, inWords(perPiece)));
      }
    }
    return stations;
  }

  private static String inWords(InkPerPiece ink) {
    String estimate = formula(ink.inputs());
    return switch (ink.source()) {
      case FORMULA -> "%s g by formula: %s".formatted(grams(ink.grams()), estimate);
      case SET_BY_HAND ->
          "%s g set by hand with the order (by formula %s g: %s)"
              .formatted(grams(ink.grams()), grams(ink.estimateG()), estimate);
      case MEASURED ->
          "%s g measured, learned from %d closed %s (by formula %s g: %s)"
              .formatted(
                  grams(ink.grams()),
                  ink.observations(),
                  ink.observations() == 1 ? "run" : "runs",
                  grams(ink.estimateG()),
                  estimate);
    };
  }

  private static String formula(InkPerPiece.Inputs in) {
    return "%d × %d mm × %s %% × %s µm (mesh %s-%s) × %s g/cm³ × %d %s × transfer %s"
        .formatted(
            in.widthMm(),
            in.heightMm(),
            plain(in.coveragePercent()),
            plain(in.depositUm()),
            plain(in.meshPerCm()),
            plain(in.threadUm()),
            plain(in.densityGPerCm3()),
            in.passes(),
            in.passes() == 1 ? "pass" : "passes",
            plain(in.transferFactor()));
  }

  private static String grams(double grams) {
    return String.format(Locale.ROOT, "%.2f", grams);
  }

  private static String plain(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
