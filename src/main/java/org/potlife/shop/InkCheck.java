package org.potlife.shop;

import java.util.Map;
import org.potlife.ink.Component;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.ink.RecipeMass;

/** R9: recipes sum to 100 %, retarder and agent keep to the limits of the ink's system. */
final class InkCheck {

  private final Shop shop;
  private final Findings findings;
  private final Map<String, InkSystem> systems;

  InkCheck(Shop shop, Findings findings) {
    this.shop = shop;
    this.findings = findings;
    this.systems = ShopCheck.byId(shop.inkSystems(), InkSystem::id);
  }

  void run() {
    findings.unique(shop.inkSystems(), InkSystem::id, "/inkSystems", "id");
    Findings.each(shop.inkSystems(), (system, i) -> system(system, "/inkSystems/" + i));
    findings.unique(shop.inks(), Ink::id, "/inks", "id");
    Findings.each(shop.inks(), (ink, i) -> ink(ink, "/inks/" + i));
  }

  private void system(InkSystem system, String pointer) {
    if (Findings.above(system.agentMinPercent(), system.agentMaxPercent())) {
      findings.add(
          pointer + "/agentMinPercent",
          "must not be above agentMaxPercent, was "
              + Findings.plain(system.agentMinPercent())
              + " over "
              + Findings.plain(system.agentMaxPercent()));
    }
    if (system.activated() && !Findings.below(system.standMinutes(), system.potLifeMinutes())) {
      findings.add(
          pointer + "/standMinutes",
          "must be below potLifeMinutes, else the ink is never ready; was "
              + system.standMinutes()
              + " of "
              + system.potLifeMinutes());
    }
  }

  private void ink(Ink ink, String pointer) {
    recipeSum(ink, pointer);
    InkSystem system = systems.get(ink.system());
    if (system != null) {
      retarder(ink, system, pointer);
      agent(ink, system, pointer);
    } else if (ink.system() != null) {
      findings.add(
          pointer + "/system",
          "names no ink system of this plant, was "
              + ink.system()
              + "; there are "
              + String.join(", ", systems.keySet().stream().sorted().toList()));
    }
  }

  private void recipeSum(Ink ink, String pointer) {
    if (ink.recipe() == null
        || ink.recipe().isEmpty()
        || ink.recipe().stream().anyMatch(c -> c == null || c.percent() == null)) {
      return;
    }
    double sum = ink.recipe().stream().mapToDouble(Component::percent).sum();
    // the comparison must not fail at 99.99 for lack of binary digits
    if (Math.abs(sum - 100) > RecipeMass.SUM_TOLERANCE_PERCENT + 1e-9) {
      findings.add(
          pointer + "/recipe",
          "must sum to 100 %, sums to "
              + Findings.plain(sum)
              + " % ("
              + (sum < 100 ? "add " : "take away ")
              + Findings.plain(Math.abs(100 - sum))
              + " %)");
    }
  }

  private void retarder(Ink ink, InkSystem system, String pointer) {
    double[] share = {0};
    Findings.each(
        ink.recipe(),
        (component, i) -> {
          if (component.role() == Component.Role.RETARDER && component.percent() != null) {
            share[0] += component.percent();
          }
        });
    if (Findings.above(share[0], system.retarderMaxPercent())) {
      findings.add(
          pointer + "/recipe",
          "must have at most "
              + Findings.plain(system.retarderMaxPercent())
              + " % retarder, has "
              + Findings.plain(share[0])
              + " %");
    }
  }

  private void agent(Ink ink, InkSystem system, String pointer) {
    if (system.process() == null) {
      return;
    }
    if (!system.activated()) {
      if (ink.agentPercent() > 0) {
        findings.add(
            pointer + "/agentPercent",
            "must be 0, the system "
                + system.id()
                + " takes no agent; was "
                + Findings.plain(ink.agentPercent()));
      }
    } else if (Findings.below(ink.agentPercent(), system.agentMinPercent())
        || Findings.above(ink.agentPercent(), system.agentMaxPercent())) {
      findings.add(
          pointer + "/agentPercent",
          "must lie between "
              + Findings.plain(system.agentMinPercent())
              + " and "
              + Findings.plain(system.agentMaxPercent())
              + " % for the system "
              + system.id()
              + ", was "
              + Findings.plain(ink.agentPercent()));
    }
  }
}
