package org.potlife.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.potlife.ink.Component;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.ComponentLine;

/**
 * R9: components in the recipe's order and shares, each a multiple of the scale's step and less
 * than a step off its share, summing to the batch to the gram; agent on top, the step within the
 * system's limits that is nearest to the ink's percentage; retarder within its limit.
 *
 * <p>A batch that is taken over was weighed by the recipe of its day: it keeps what it holds.
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
      if (batch.fromStock()) {
        notes.check(
            Completeness.there(batch.line().components()).isEmpty()
                && batch.line().agentG() == 0
                && batch.line().retarderG() == 0,
            batch.id(),
            "is from the shelf and has nothing to weigh");
        process(batch, notes);
        continue;
      }
      Optional<BatchLine> made =
          evidence.madeBefore(batch).filter(before -> before.massG() == batch.line().massG());
      if (made.isPresent()) {
        asMade(batch.line(), made.get(), notes);
        continue;
      }
      notes.check(
          Objects.equals(
              batch.line().recipeVersion(), evidence.ink().recipeVersion(batch.ink().id())),
          batch.id(),
          "is weighed by version %s of the recipe, in force is %s",
          batch.line().recipeVersion(),
          evidence.ink().recipeVersion(batch.ink().id()));
      recipe(batch, step, notes);
      agent(batch, step, notes);
      process(batch, notes);
    }
  }

  private static void process(BatchFacts batch, Notes notes) {
    notes.check(
        batch.system().process().toString().equals(batch.line().process()),
        batch.id(),
        "is written as %s, ink %s is %s",
        batch.line().process(),
        batch.ink().id(),
        batch.system().process());
  }

  private static void asMade(BatchLine line, BatchLine made, Notes notes) {
    notes.check(
        Objects.equals(line.components(), made.components())
            && line.agentG() == made.agentG()
            && line.agentPercent() == made.agentPercent()
            && line.retarderG() == made.retarderG()
            && Objects.equals(line.process(), made.process()),
        line.id(),
        "was to be weighed as %s and %d g agent, now says %s and %d g",
        made.components(),
        made.agentG(),
        line.components(),
        line.agentG());
  }

  private static void recipe(BatchFacts batch, int step, Notes notes) {
    BatchLine line = batch.line();
    Ink ink = batch.ink();
    double percent = ink.recipe().stream().mapToDouble(Component::percent).sum();
    notes.check(
        Math.abs(percent - 100) <= Tolerance.RECIPE_SUM_PERCENT,
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
    double allowed = step * (1 + Tolerance.ARITHMETIC);
    for (int i = 0; i < components.size(); i++) {
      Component wanted = ink.recipe().get(i);
      ComponentLine found = components.get(i);
      String role = wanted.role().name().toLowerCase(Locale.ROOT);
      double share = line.massG() * wanted.percent() / percent;
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
      notes.check(
          found.massG() % step == 0,
          batch.id(),
          "%d g of %s cannot be weighed on a scale with steps of %d g",
          found.massG(),
          wanted.name(),
          step);
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
        line.agentG() % step == 0 && Math.abs(line.agentG() - grams) <= nearest(batch, grams, step),
        batch.id(),
        "has %d g agent, %.2f %% of %d g are %.1f g",
        line.agentG(),
        percent,
        line.massG(),
        grams);
  }

  /** How far the agent may be off: as the nearest step that the system allows, if it allows any. */
  private static double nearest(BatchFacts batch, double grams, int step) {
    double noise = Tolerance.ARITHMETIC * Math.max(1, batch.line().massG());
    double least = batch.line().massG() * batch.system().agentMinPercent() / 100 - noise;
    double most = batch.line().massG() * batch.system().agentMaxPercent() / 100 + noise;
    double best = Double.POSITIVE_INFINITY;
    for (long g = (long) Math.ceil(least / step) * step;
        batch.activated() && g <= most;
        g += step) {
      best = Math.min(best, Math.abs(g - grams));
    }
    return noise + (best == Double.POSITIVE_INFINITY ? step / 2.0 : best);
  }
}
