package org.potlife.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.potlife.ink.Component;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.ComponentLine;

/**
 * R9: components in the recipe's order and shares, summing to the batch to the gram; agent on top,
 * within the system's limits; retarder within its limit.
 *
 * <p>A component may differ from its share by one step of the scale, or half a step for each
 * component where one takes up the rounding of all.
 */
final class R9Recipe implements Rule {

  @Override
  public String number() {
    return "R9";
  }

  @Override
  public String title() {
    return "Recipe and mass balance";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    int step = evidence.shop().inkRoom().scaleStepG();
    for (BatchFacts batch : evidence.batches()) {
      recipe(batch, step, notes);
      agent(batch, step, notes);
      notes.check(
          batch.system().process().toString().equals(batch.line().process()),
          batch.id(),
          "is written as %s, ink %s is %s",
          batch.line().process(),
          batch.ink().id(),
          batch.system().process());
    }
  }

  private static void recipe(BatchFacts batch, int step, Notes notes) {
    BatchLine line = batch.line();
    Ink ink = batch.ink();
    double percent = ink.recipe().stream().mapToDouble(Component::percent).sum();
    notes.check(
        Math.abs(percent - 100) <= 100 * Tolerance.ARITHMETIC,
        batch.id(),
        "the recipe of %s sums to %.3f %%",
        ink.id(),
        percent);
    List<ComponentLine> components = new ArrayList<>();
    if (line.components() != null) {
      line.components().stream().filter(Objects::nonNull).forEach(components::add);
    }
    if (!notes.check(
        components.size() == ink.recipe().size(),
        batch.id(),
        "has %d components, the recipe of %s has %d",
        components.size(),
        ink.id(),
        ink.recipe().size())) {
      return;
    }
    int sum = 0;
    int retarder = 0;
    double allowed = step * Math.max(1.0, components.size() / 2.0);
    for (int i = 0; i < components.size(); i++) {
      Component wanted = ink.recipe().get(i);
      ComponentLine found = components.get(i);
      String role = wanted.role().name().toLowerCase(Locale.ROOT);
      double share = line.massG() * wanted.percent() / 100;
      notes.check(
          wanted.name().equals(found.name()) && role.equals(found.role()),
          batch.id(),
          "component %d is %s (%s), the recipe says %s (%s)",
          i + 1,
          found.name(),
          found.role(),
          wanted.name(),
          role);
      notes.check(
          found.massG() >= 0 && Math.abs(found.massG() - share) <= allowed,
          batch.id(),
          "%d g of %s, %.1f %% of %d g are %.1f g",
          found.massG(),
          wanted.name(),
          wanted.percent(),
          line.massG(),
          share);
      sum += found.massG();
      retarder += wanted.role() == Component.Role.RETARDER ? found.massG() : 0;
    }
    notes.check(
        sum == line.massG(),
        batch.id(),
        "components sum to %d g, the batch has %d g",
        sum,
        line.massG());
    notes.check(
        line.retarderG() == retarder,
        batch.id(),
        "says %d g retarder, the components hold %d g",
        line.retarderG(),
        retarder);
    double most = line.massG() * batch.system().retarderMaxPercent() / 100;
    notes.check(
        retarder <= most + allowed,
        batch.id(),
        "has %d g retarder, at most %.1f g (%.1f %%) are allowed",
        retarder,
        most,
        batch.system().retarderMaxPercent());
  }

  private static void agent(BatchFacts batch, int step, Notes notes) {
    BatchLine line = batch.line();
    InkSystem system = batch.system();
    double percent = batch.activated() ? batch.ink().agentPercent() : 0;
    notes.check(
        Math.abs(line.agentPercent() - percent) <= Tolerance.ARITHMETIC * 100,
        batch.id(),
        "says %.2f %% agent, ink %s takes %.2f %%",
        line.agentPercent(),
        batch.ink().id(),
        percent);
    notes.check(
        !batch.activated()
            || percent >= system.agentMinPercent() && percent <= system.agentMaxPercent(),
        batch.id(),
        "has %.2f %% agent, system %s allows %.2f to %.2f %%",
        percent,
        system.id(),
        system.agentMinPercent(),
        system.agentMaxPercent());
    double grams = line.massG() * percent / 100;
    notes.check(
        Math.abs(line.agentG() - grams) <= step / 2.0 + Tolerance.ARITHMETIC * line.massG(),
        batch.id(),
        "has %d g agent, %.2f %% of %d g are %.1f g",
        line.agentG(),
        percent,
        line.massG(),
        grams);
  }
}
