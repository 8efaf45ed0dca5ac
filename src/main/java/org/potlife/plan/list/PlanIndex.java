package org.potlife.plan.list;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.potlife.ink.Ink;
import org.potlife.ink.InkReport;
import org.potlife.ink.StockInk;
import org.potlife.order.GramsPerPiece;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.room.CabinetAir;
import org.potlife.room.ClimateReading;
import org.potlife.screen.Cabinet;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.shop.Shop;

/** A plan with the shop and the orders it was made for, looked up by name. */
public final class PlanIndex {

  private final Shop shop;
  private final PlanSheet sheet;
  private final Map<String, Order> orders;
  private final Map<String, RunLine> runs;
  private final List<String> longestFirst;
  private final Map<String, BatchLine> batches;
  private final Map<String, ScreenLine> screens;
  private final Map<String, LateLine> late;
  private final Map<String, Ink> inks;
  private final GramsPerPiece gramsPerPiece;
  private final List<ClimateReading> climate;
  private final Set<String> lightOnly;

  /** A plan made when no closed run had taught anything. */
  public PlanIndex(Shop shop, List<Order> orders, PlanSheet sheet) {
    this(shop, orders, sheet, InkReport.NOTHING, List.of());
  }

  /**
   * @param ink what the ink room had told when the plan was made
   * @param climate readings of the cabinets when the plan was made
   */
  public PlanIndex(
      Shop shop, List<Order> orders, PlanSheet sheet, InkReport ink, List<ClimateReading> climate) {
    this.shop = shop;
    this.sheet = sheet;
    this.orders = byName(orders, Order::reference);
    this.runs = byName(sheet.runs(), RunLine::id);
    this.longestFirst =
        runs.keySet().stream().sorted(Comparator.comparingInt(String::length).reversed()).toList();
    this.batches = byName(sheet.batches(), BatchLine::id);
    this.screens = byName(sheet.screens(), ScreenLine::id);
    this.late = byName(sheet.late(), LateLine::order);
    this.inks = byName(shop.inks(), Ink::id);
    this.gramsPerPiece = new GramsPerPiece(shop, ink.learned());
    this.climate = List.copyOf(climate);
    this.lightOnly =
        ink.stock().stream()
            .filter(StockInk::lightOnly)
            .map(StockInk::container)
            .collect(Collectors.toSet());
  }

  /** Whether a container holds what once had agent, for light garments alone (R13). */
  boolean isLightOnly(String container) {
    return lightOnly.contains(container);
  }

  private static <T> Map<String, T> byName(List<T> list, Function<T, String> name) {
    return list.stream()
        .collect(Collectors.toMap(name, Function.identity(), (a, b) -> a, LinkedHashMap::new));
  }

  public Shop shop() {
    return shop;
  }

  public PlanSheet sheet() {
    return sheet;
  }

  /** The plant's zone, in which its days begin and end. */
  public ZoneId zone() {
    return shop.timeZone();
  }

  Optional<Order> findOrder(String reference) {
    return Optional.ofNullable(orders.get(reference));
  }

  public Optional<Print> findPrint(RunLine run) {
    return findOrder(run.order()).stream()
        .flatMap(order -> order.prints().stream())
        .filter(p -> p.design().equals(run.design()) && p.position().equals(run.position()))
        .findFirst();
  }

  public Optional<RunLine> findRun(String id) {
    return Optional.ofNullable(runs.get(id));
  }

  /** The run with this id; a sheet that names a run it does not have is broken. */
  RunLine getRun(String id) {
    return findRun(id).orElseThrow(() -> new IllegalArgumentException("the plan has no run " + id));
  }

  /** A run as people call it: order, design and place; the id itself when there is no such run. */
  public String runName(String id) {
    return findRun(id).map(RunLine::words).orElse(id);
  }

  /** A text with the ids of runs replaced by the names that people use. */
  String inWords(String text) {
    String words = text;
    // long ids first: one may begin another
    for (String id : longestFirst) {
      if (words.contains(id)) {
        words = words.replace(id, runName(id));
      }
    }
    return words;
  }

  public Optional<BatchLine> findBatch(String id) {
    return Optional.ofNullable(batches.get(id));
  }

  Optional<ScreenLine> findScreen(String id) {
    return Optional.ofNullable(screens.get(id));
  }

  Optional<LateLine> findLate(String order) {
    return Optional.ofNullable(late.get(order));
  }

  Optional<Ink> findInk(String id) {
    return Optional.ofNullable(inks.get(id));
  }

  /** What the plan reckons each colour to take on a piece. */
  GramsPerPiece gramsPerPiece() {
    return gramsPerPiece;
  }

  /** The air in a cabinet as the plan reckons with it. */
  CabinetAir air(Cabinet cabinet) {
    return new CabinetAir(
        cabinet, zone(), shop.screenRoom().emulsion().humidityLimitPercent(), climate);
  }

  InkChip chip(String ink) {
    return new InkChip(ink, findInk(ink).map(Ink::swatch).orElse(InkChip.UNKNOWN));
  }

  /** The garments of an order as the packing list calls them; empty when the order is unknown. */
  String garments(String order) {
    return findOrder(order)
        .map(o -> o.garments().style() + ", " + o.garments().colour())
        .orElse("");
  }

  /** The plant's local day of an instant. */
  public LocalDate dayOf(OffsetDateTime instant) {
    return instant.atZoneSameInstant(zone()).toLocalDate();
  }

  /** Whether the stretch has a part of this local day; one that ends at its midnight has none. */
  boolean touches(LocalDate day, OffsetDateTime from, OffsetDateTime to) {
    OffsetDateTime begin = day.atStartOfDay(zone()).toOffsetDateTime();
    OffsetDateTime end = day.plusDays(1).atStartOfDay(zone()).toOffsetDateTime();
    boolean startsWithin = !from.isBefore(begin) && from.isBefore(end);
    return startsWithin || (from.isBefore(begin) && to.isAfter(begin));
  }
}
