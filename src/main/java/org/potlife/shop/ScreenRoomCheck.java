package org.potlife.shop;

import java.time.LocalTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.potlife.ink.Ink;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;
import org.potlife.screen.KeptStencil;
import org.potlife.screen.ScreenRoom;

/** The screen room's store (R7), its frames and kept stencils (R8), its cabinets' climate. */
final class ScreenRoomCheck {

  private static final String ROOM = "/screenRoom";

  private record Mesh(Double perCm, Double threadUm) {

    boolean complete() {
      return perCm != null && threadUm != null;
    }

    @Override
    public String toString() {
      return Findings.plain(perCm) + " threads/cm of " + Findings.plain(threadUm) + " um";
    }
  }

  private final ScreenRoom room;
  private final Shop shop;
  private final Findings findings;

  ScreenRoomCheck(ScreenRoom room, Shop shop, Findings findings) {
    this.room = room;
    this.shop = shop;
    this.findings = findings;
  }

  void run() {
    store();
    cabinets();
    frames();
    keptInks();
    new ShiftCheck(findings, ROOM).run(room.shifts(), room.closures());
  }

  private void store() {
    if (Findings.above(room.storeHumidityPercent(), room.emulsion().humidityLimitPercent())) {
      findings.add(
          ROOM + "/storeHumidityPercent",
          "must not be above the emulsion's humidityLimitPercent, else coated screens get wet again;"
              + " was "
              + Findings.plain(room.storeHumidityPercent())
              + " over "
              + Findings.plain(room.emulsion().humidityLimitPercent()));
    }
  }

  private void cabinets() {
    findings.unique(room.cabinets(), Cabinet::id, ROOM + "/cabinets", "id");
    Findings.each(
        room.cabinets(),
        (cabinet, i) -> {
          LocalTime[] last = {null};
          Findings.each(
              cabinet.climate(), (period, j) -> climate(period, i + "/climate/" + j, last));
        });
  }

  private void climate(ClimatePeriod period, String place, LocalTime[] last) {
    if (period.from() == null) {
      return;
    }
    if (last[0] != null && !period.from().isAfter(last[0])) {
      findings.add(
          ROOM + "/cabinets/" + place + "/from",
          "must be after the period before, was " + period.from() + " after " + last[0]);
    }
    last[0] = period.from();
  }

  private void frames() {
    findings.unique(room.kept(), KeptStencil::screen, ROOM + "/kept", "screen");
    Map<Mesh, Integer> held = new HashMap<>();
    Findings.each(
        room.kept(), (k, i) -> held.merge(new Mesh(k.meshPerCm(), k.threadUm()), 1, Integer::sum));
    Set<Mesh> owned = new HashSet<>();
    Findings.each(
        room.frames(),
        (stock, i) -> {
          Mesh mesh = new Mesh(stock.meshPerCm(), stock.threadUm());
          if (!mesh.complete()) {
            return;
          }
          if (!owned.add(mesh)) {
            findings.add(
                ROOM + "/frames/" + i, "must be unique, frames of " + mesh + " are listed before");
          } else if (Findings.below(stock.count(), held.getOrDefault(mesh, 0))) {
            findings.add(
                ROOM + "/frames/" + i + "/count",
                "must be at least the "
                    + held.get(mesh)
                    + " that hold kept stencils, was "
                    + stock.count());
          }
        });
    Findings.each(
        room.kept(),
        (stencil, i) -> {
          Mesh mesh = new Mesh(stencil.meshPerCm(), stencil.threadUm());
          if (mesh.complete() && !owned.contains(mesh)) {
            findings.add(ROOM + "/kept/" + i, "is on " + mesh + ", of which no frames are listed");
          }
        });
  }

  private void keptInks() {
    Map<String, Ink> inks = ShopCheck.byId(shop.inks(), Ink::id);
    Findings.each(
        room.kept(),
        (stencil, i) -> {
          if (stencil.ink() != null && !inks.containsKey(stencil.ink())) {
            findings.add(
                ROOM + "/kept/" + i + "/ink", "is not an ink of this plant, was " + stencil.ink());
          }
        });
  }
}
