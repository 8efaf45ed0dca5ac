package org.potlife.web;

import io.quarkus.qute.TemplateExtension;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.potlife.plan.list.ActivationList.Batch;
import org.potlife.plan.list.BeltChange;
import org.potlife.plan.list.ScreenList.Frame;
import org.potlife.plan.list.ScreenList.MeshUse;
import org.potlife.plan.list.ScreenList.Stage;
import org.potlife.plan.list.ScreenList.Stop;
import org.potlife.sheet.DurationWords;

/** How figures and names are dressed for paper. */
@TemplateExtension
final class Dress {

  private Dress() {}

  /** Belt speed to the hundredth, rounded down: a belt set too slow still cures. */
  static String speed(double metresPerMinute) {
    return BigDecimal.valueOf(metresPerMinute).setScale(2, RoundingMode.FLOOR).toPlainString();
  }

  /** A figure without needless zeros. */
  static String plain(double value) {
    return BigDecimal.valueOf(value)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** A figure to the tenth. */
  static String tenth(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  /** Why the speed of a belt is turned. */
  static String reason(BeltChange change) {
    String runs = joined(change.runs());
    return switch (change.why()) {
      case "comes" -> "before " + runs + " comes";
      case "goes" -> "when " + runs + " is off the belt";
      default -> runs + " on the empty belt";
    };
  }

  /** Mesh as the trade writes it: threads per cm, thread diameter in um. */
  static String mesh(Frame frame) {
    return plain(frame.meshPerCm()) + "-" + plain(frame.threadUm());
  }

  /** Mesh as the trade writes it: threads per cm, thread diameter in um. */
  static String mesh(MeshUse use) {
    return plain(use.meshPerCm()) + "-" + plain(use.threadUm());
  }

  /** Frames that are left when most are in use. */
  static int free(MeshUse use) {
    return use.owned() - use.mostInUse();
  }

  /** A figure without its fraction. */
  static String whole(double value) {
    return String.valueOf(Math.round(value));
  }

  /** What helps against air that is too humid to dry in. */
  static String help(Stop stop) {
    String air =
        stop.driesFromC() == null
            ? "Drier air helps"
            : "Drier air helps, or warming this air to "
                + BigDecimal.valueOf(stop.driesFromC())
                    .setScale(1, RoundingMode.CEILING)
                    .toPlainString()
                + " \u00b0C";
    return stop.dryCabinets().isEmpty()
        ? air + "; no other cabinet dries all that time."
        : air + ", or another cabinet that dries: " + joined(stop.dryCabinets()) + ".";
  }

  /** The batch's name as a part of an address. */
  static String address(Batch batch) {
    return URLEncoder.encode(batch.id(), StandardCharsets.UTF_8).replace("+", "%20");
  }

  /** A text as a part of an address. */
  static String urlEncoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }

  /** Names in a row. */
  static String joined(List<String> names) {
    return String.join(", ", names);
  }

  /** Minutes as hours and minutes, from an hour on. */
  static String duration(long minutes) {
    return DurationWords.of(minutes);
  }

  /** Minutes as hours and minutes, from an hour on. */
  static String duration(int minutes) {
    return duration((long) minutes);
  }

  /** What is done at a stage. */
  static String title(Stage stage) {
    return stageTitle(stage.step());
  }

  /** What is done at a stage, by its name on the sheet. */
  static String stageTitle(String step) {
    return switch (step) {
      case "degrease" -> "Degrease";
      case "dry-degreased" -> "Dry after degreasing";
      case "coat" -> "Coat";
      case "dry-coated" -> "Dry the coat";
      case "expose" -> "Expose";
      case "wash-out" -> "Wash out";
      case "dry-washed" -> "Dry after washing out";
      case "post-expose" -> "Post-expose";
      case "tape" -> "Tape and check";
      default -> step;
    };
  }

  /** A kind of cost in words, by its name on the sheet. */
  static String costKind(String kind) {
    return switch (kind) {
      case "setUp" -> "set-ups";
      case "overtime" -> "overtime";
      case "emptyBelt" -> "belts running empty";
      case "inkLost" -> "activated ink lost";
      case "change" -> "changes against the plan in force";
      case "finish" -> "late finish of the whole";
      case "thinSlack" -> "thin slack before due dates";
      case "lightBeforeDark" -> "light cloth before dark";
      default -> kind;
    };
  }

  /** How batches are cut, by the name on the list. */
  static String cuttingRule(String rule) {
    return switch (rule) {
      case "plan" -> "this plan";
      case "batch-per-run" -> "one batch per run";
      case "batch-per-ink" -> "one batch per ink, split where pot life or container force it";
      case "whole-day-at-once" -> "the whole day's ink at its first use, dead ink made anew";
      default -> rule;
    };
  }

  /** Money to the cent. */
  static String money(double amount) {
    return BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }

  /** What keeps the run from going faster. */
  static String limit(String limitedBy) {
    return switch (limitedBy == null ? "" : limitedBy) {
      case "press" -> "set by the press";
      case "dryer" -> "held back by the dryer: do not run faster";
      default -> limitedBy == null ? "" : limitedBy;
    };
  }
}
