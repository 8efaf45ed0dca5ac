package org.potlife.testing;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.potlife.ink.Process;
import org.potlife.order.Colour;
import org.potlife.order.Garments;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.order.TrialPrint;

/**
 * A small order; see the package text. By default 100 navy shirts of reactive-dyed cotton, in house
 * the evening before {@link SmallShop#DAY}, due two days after it at 18:00, with one discharge
 * print "crest" on the front in brick.
 */
public final class SmallOrder {

  private final String reference;
  private final List<PrintSpec> prints = new ArrayList<>();
  private Integer priority;
  private OffsetDateTime dueAt = SmallShop.at(2, "18:00");
  private OffsetDateTime inHouse = SmallShop.at(-1, "18:00");
  private boolean listedOrder;
  private String kind;
  private String clothColour = "navy";
  private double clothLightness = 20;
  private double cottonPercent = 100;
  private String dye = "reactive";
  private int quantity = 100;
  private Integer blanks;
  private int lengthMm = 720;
  private int widthMm = 560;
  private int massG = 190;

  private SmallOrder(String reference) {
    this.reference = reference;
  }

  public static SmallOrder order(String reference) {
    return new SmallOrder(reference);
  }

  public SmallOrder priority(int oneIsUrgent) {
    priority = oneIsUrgent;
    return this;
  }

  /** Due on {@link SmallShop#DAY}. */
  public SmallOrder due(String time) {
    return due(0, time);
  }

  public SmallOrder due(int daysLater, String time) {
    dueAt = SmallShop.at(daysLater, time);
    return this;
  }

  /** Garments come on {@link SmallShop#DAY}. */
  public SmallOrder inHouse(String time) {
    return inHouse(0, time);
  }

  public SmallOrder inHouse(int daysLater, String time) {
    inHouse = SmallShop.at(daysLater, time);
    return this;
  }

  public SmallOrder printsInListedOrder() {
    listedOrder = true;
    return this;
  }

  public SmallOrder quantity(int pieces) {
    quantity = pieces;
    return this;
  }

  public SmallOrder blanks(int pieces) {
    blanks = pieces;
    return this;
  }

  public SmallOrder kind(String garmentKind) {
    kind = garmentKind;
    return this;
  }

  public SmallOrder cloth(String colour, double lightness) {
    clothColour = colour;
    clothLightness = lightness;
    return this;
  }

  public SmallOrder cotton(double percent, String dyedWith) {
    cottonPercent = percent;
    dye = dyedWith;
    return this;
  }

  public SmallOrder garment(int length, int width, int grams) {
    lengthMm = length;
    widthMm = width;
    massG = grams;
    return this;
  }

  /** Begins a print, water-based until told; what follows belongs to it. */
  public SmallOrder print(String design, String position) {
    prints.add(new PrintSpec(design, position));
    return this;
  }

  /** A discharge print whose trial print has passed. */
  public SmallOrder discharge() {
    last().process = Process.DISCHARGE;
    last().trialPrint = TrialPrint.PASSED;
    return this;
  }

  public SmallOrder trialPrint(TrialPrint state) {
    last().trialPrint = state;
    return this;
  }

  public SmallOrder artworkNotApproved() {
    last().artworkApproved = false;
    return this;
  }

  public SmallOrder image(int width, int height) {
    last().widthMm = width;
    last().heightMm = height;
    return this;
  }

  public SmallOrder passes(int strokes) {
    last().passes = strokes;
    return this;
  }

  public SmallOrder flashes(int stations) {
    last().flashes = stations;
    return this;
  }

  /** A colour that covers 20 % of the image, on 43 threads per cm of 80 um. */
  public SmallOrder colour(String ink) {
    return colour(ink, 20);
  }

  public SmallOrder colour(String ink, double coveragePercent) {
    return colour(ink, coveragePercent, 43, 80);
  }

  public SmallOrder colour(String ink, double coveragePercent, double meshPerCm, double threadUm) {
    last().colours.add(new Colour(ink, coveragePercent, meshPerCm, threadUm, null, null));
    return this;
  }

  /** A colour of which the plant has weighed so many grams per piece. */
  public SmallOrder weighedColour(String ink, double gramsPerPiece) {
    last().colours.add(new Colour(ink, 20.0, 43.0, 80.0, null, gramsPerPiece));
    return this;
  }

  public Order build() {
    if (prints.isEmpty()) {
      print("crest", "front").discharge();
    }
    return new Order(
        reference,
        "Harbour Choir",
        priority,
        dueAt,
        listedOrder,
        new Garments(
            "tee",
            kind,
            clothColour,
            clothLightness,
            cottonPercent,
            dye,
            quantity,
            blanks,
            inHouse,
            lengthMm,
            widthMm,
            massG),
        prints.stream().map(PrintSpec::build).toList());
  }

  private PrintSpec last() {
    if (prints.isEmpty()) {
      print("crest", "front");
    }
    return prints.get(prints.size() - 1);
  }

  private static final class PrintSpec {
    private final String design;
    private final String position;
    private final List<Colour> colours = new ArrayList<>();
    private Process process = Process.WATER_BASED;
    private Boolean artworkApproved;
    private TrialPrint trialPrint;
    private Integer passes;
    private int widthMm = 300;
    private int heightMm = 380;
    private Integer flashes;

    private PrintSpec(String design, String position) {
      this.design = design;
      this.position = position;
    }

    private Print build() {
      String usual = process == Process.DISCHARGE ? "brick" : "white";
      return new Print(
          design,
          position,
          process,
          artworkApproved,
          trialPrint,
          passes,
          widthMm,
          heightMm,
          flashes,
          colours.isEmpty()
              ? List.of(new Colour(usual, 20.0, 43.0, 80.0, null, null))
              : List.copyOf(colours));
    }
  }
}
