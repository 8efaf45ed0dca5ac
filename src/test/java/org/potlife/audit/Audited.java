package org.potlife.audit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

/** All that an audit is given, with small changes to it. */
record Audited(Shop shop, List<Order> orders, PlanSheet sheet, Optional<PlanSheet> published) {

  static Audited good() {
    return new Audited(SmallShop.shop(), SmallShop.orders(), GoodPlan.sheet(), Optional.empty());
  }

  AuditReport report() {
    return Audit.of(shop, orders, sheet, published);
  }

  Set<String> brokenRules() {
    Set<String> rules = new TreeSet<>();
    report().findings().forEach(finding -> rules.add(finding.rule()));
    return rules;
  }

  Audited sheet(Object... namesAndValues) {
    return new Audited(shop, orders, Edit.with(sheet, namesAndValues), published);
  }

  Audited run(String id, Object... namesAndValues) {
    return sheet(
        "runs",
        Edit.each(
            sheet.runs(),
            (RunLine run) -> run.id().equals(id) ? Edit.with(run, namesAndValues) : run));
  }

  Audited batch(String id, Object... namesAndValues) {
    return batch(id, batch -> Edit.with(batch, namesAndValues));
  }

  Audited batch(String id, UnaryOperator<BatchLine> change) {
    return sheet(
        "batches", Edit.each(sheet.batches(), b -> b.id().equals(id) ? change.apply(b) : b));
  }

  Audited screen(String id, Object... namesAndValues) {
    return sheet(
        "screens",
        Edit.each(
            sheet.screens(),
            (ScreenLine s) -> s.id().equals(id) ? Edit.with(s, namesAndValues) : s));
  }

  Audited step(String screen, Stage stage, Object... namesAndValues) {
    ScreenLine line =
        sheet.screens().stream().filter(s -> s.id().equals(screen)).findFirst().orElseThrow();
    return screen(
        screen,
        "steps",
        Edit.at(line.steps(), stage.ordinal(), (StepLine step) -> Edit.with(step, namesAndValues)));
  }

  Audited belt(int index, Object... namesAndValues) {
    return sheet(
        "belts", Edit.at(sheet.belts(), index, (BeltLine belt) -> Edit.with(belt, namesAndValues)));
  }

  Audited order(String reference, UnaryOperator<Order> change) {
    return new Audited(
        shop,
        Edit.each(orders, o -> o.reference().equals(reference) ? change.apply(o) : o),
        sheet,
        published);
  }

  Audited garments(String reference, Object... namesAndValues) {
    return order(reference, o -> Edit.with(o, "garments", Edit.with(o.garments(), namesAndValues)));
  }

  Audited print(String reference, int index, Object... namesAndValues) {
    return order(
        reference,
        o -> Edit.with(o, "prints", Edit.at(o.prints(), index, p -> Edit.with(p, namesAndValues))));
  }

  Audited shop(UnaryOperator<Shop> change) {
    return new Audited(change.apply(shop), orders, sheet, published);
  }

  Audited press(String id, Object... namesAndValues) {
    return shop(
        s ->
            Edit.with(
                s,
                "presses",
                Edit.each(
                    s.presses(),
                    (Press p) -> p.id().equals(id) ? Edit.with(p, namesAndValues) : p)));
  }

  Audited dryer(Object... namesAndValues) {
    return shop(
        s -> Edit.with(s, "dryers", Edit.each(s.dryers(), d -> Edit.with(d, namesAndValues))));
  }

  Audited cabinet(Object... namesAndValues) {
    return screenRoom(
        "cabinets", Edit.each(shop.screenRoom().cabinets(), c -> Edit.with(c, namesAndValues)));
  }

  Audited screenRoom(Object... namesAndValues) {
    return shop(s -> Edit.with(s, "screenRoom", Edit.with(s.screenRoom(), namesAndValues)));
  }

  Audited inkRoom(Object... namesAndValues) {
    return shop(s -> Edit.with(s, "inkRoom", Edit.with(s.inkRoom(), namesAndValues)));
  }

  Audited discharge(Object... namesAndValues) {
    return shop(
        s ->
            Edit.with(
                s,
                "inkSystems",
                Edit.at(s.inkSystems(), 0, system -> Edit.with(system, namesAndValues))));
  }

  Audited published(PlanSheet plan) {
    return new Audited(shop, orders, sheet, Optional.of(plan));
  }
}
