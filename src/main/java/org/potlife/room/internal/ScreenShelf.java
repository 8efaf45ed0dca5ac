package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.potlife.event.EventLog;
import org.potlife.room.KnownScreens;
import org.potlife.room.PlannedLife;
import org.potlife.room.ScreenBook;
import org.potlife.room.ScreenStatus;
import org.potlife.screen.KeptStencil;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Every screen that the plan in force or the set-up knows, as plan and reports have it. */
@ApplicationScoped
class ScreenShelf implements ScreenBook {

  private static final Set<String> TYPES =
      Set.of("screen.moved", "screen.tension", "screen.broken", "emulsion.reading");

  /** Long enough for the tension of a frame and for a stencil that is kept. */
  private static final Duration HISTORY_KEPT = Duration.ofDays(730);

  private final KnownScreens screens;
  private final Shops shops;
  private final EventLog log;

  @Inject
  ScreenShelf(KnownScreens screens, Shops shops, EventLog log) {
    this.screens = screens;
    this.shops = shops;
    this.log = log;
  }

  static String unknown(String screen) {
    return "Neither the plan in force nor the kept stencils have a screen " + screen + ".";
  }

  /** Whether the plan in force or the kept stencils have a screen of this id. */
  boolean isKnown(String plant, String screen) {
    return screens.isPlanned(plant, screen)
        || shops.getShop(plant).shop().screenRoom().kept().stream()
            .anyMatch(stencil -> stencil.screen().equals(screen));
  }

  /** One screen with its history; one that was only ever reported is found too. */
  Optional<ScreenStatus> find(String plant, String screen, Instant now) {
    return list(plant, now).stream().filter(status -> status.screen().equals(screen)).findFirst();
  }

  /** All screens, those of the plan first, then kept stencils, then what was reported besides. */
  @Override
  public List<ScreenStatus> list(String plant, Instant now) {
    Shop shop = shops.getShop(plant).shop();
    OffsetDateTime local = now.atZone(shop.timeZone()).toOffsetDateTime();
    Map<String, ScreenDraft> drafts = new LinkedHashMap<>();
    screens.findSheet(plant).ifPresent(sheet -> planned(sheet, local, drafts));
    for (KeptStencil stencil : shop.screenRoom().kept()) {
      drafts.computeIfAbsent(stencil.screen(), ScreenDraft::new).kept(stencil);
    }
    ScreenHistory history =
        ScreenHistory.of(
            log.list(plant, TYPES, now.minus(HISTORY_KEPT)).stream()
                .filter(event -> !event.time().isAfter(now))
                .toList(),
            shop.timeZone());
    history.screens().forEach(id -> drafts.computeIfAbsent(id, ScreenDraft::new));
    return drafts.values().stream().map(draft -> draft.status(history)).toList();
  }

  private static void planned(
      PlanSheet sheet, OffsetDateTime now, Map<String, ScreenDraft> drafts) {
    for (ScreenLine line : sheet.screens()) {
      PlannedLife life =
          PlannedLife.of(
              line,
              sheet.runs().stream().filter(run -> line.runs().contains(run.id())).toList(),
              now);
      drafts.computeIfAbsent(line.id(), ScreenDraft::new).planned(line, life);
    }
  }
}
