package org.potlife.audit;

/**
 * R16: the heat to warm and evaporate the water of the deposit and of the cloth, at the dryer's
 * efficiency, is at every moment within what the dryer can give.
 */
final class R16Water implements Rule {

  @Override
  public String number() {
    return "R16";
  }

  @Override
  public String title() {
    return "Water";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    TunnelMoment bad = null;
    for (TunnelMoment moment : evidence.tunnelMoments()) {
      double usable = moment.dryer().usableHeatKw();
      boolean holds =
          moment.heatKw() <= usable * (1 + Tolerance.ARITHMETIC) + moment.heatRoundingKw();
      // closed runs may have taught since that frozen runs are wetter than was thought: they stay
      holds |=
          evidence.ink().hasLearned()
              && moment.inTunnel().stream().allMatch(run -> evidence.isFrozen(run.id()));
      holds |= moment.isFedByFactsAlone(evidence);
      boolean sameTrouble = bad != null && bad.continuesIn(moment);
      bad = holds ? null : moment;
      notes.check(
          holds || sameTrouble,
          "belt " + moment.dryer().id(),
          "from %s the runs %s need %.2f kW, the dryer gives %.2f kW",
          evidence.at(moment.from()),
          moment.names(),
          moment.heatKw(),
          usable);
    }
    for (BeltFacts belt : evidence.belts()) {
      BeltShare share =
          BeltShare.of(
              evidence, belt, moment -> 100 * moment.heatKw() / belt.dryer().usableHeatKw());
      notes.check(
          share.allows(belt.line().heatPercent()),
          "belt " + belt.dryer().id(),
          "says %d %% of its heat from %s, the runs take %s",
          belt.line().heatPercent(),
          evidence.at(belt.from()),
          share);
    }
  }
}
