package org.potlife.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Rough times for dispatch rules: what a run takes on a press with the dryer to itself. */
public final class DispatchTimes {

  private final Problem problem;
  private final SetUp setUps;
  private final List<List<Integer>> runsOfLot = new ArrayList<>();
  private final double[][] printS;
  private final int[] garmentsFrom;
  private final int[][] runsOfScreens;

  public DispatchTimes(Problem problem) {
    this.problem = problem;
    setUps = new SetUp(problem);
    for (int lot = 0; lot < problem.lots(); lot++) {
      runsOfLot.add(new ArrayList<>());
    }
    for (int run = 0; run < problem.movable(); run++) {
      runsOfLot.get(problem.runs()[run].garmentLot()).add(run);
    }
    runsOfScreens = runsOfScreens(problem);
    garmentsFrom =
        Arrays.stream(problem.runs(), 0, problem.movable())
            .mapToInt(RunSpec::garmentsFrom)
            .toArray();
    printS = new double[problem.presses().length][problem.movable()];
    for (int press = 0; press < printS.length; press++) {
      for (int run = 0; run < problem.movable(); run++) {
        printS[press][run] = problem.runs()[run].presses()[press] ? print(run, press) : Double.NaN;
      }
    }
  }

  private static int[][] runsOfScreens(Problem problem) {
    Map<Integer, List<Integer>> users = new HashMap<>();
    for (int run = 0; run < problem.movable(); run++) {
      for (int screen : problem.runs()[run].screens()) {
        users.computeIfAbsent(screen, same -> new ArrayList<>()).add(run);
      }
    }
    return Arrays.stream(problem.runs())
        .map(
            run ->
                Arrays.stream(run.screens())
                    .boxed()
                    .flatMap(screen -> users.getOrDefault(screen, List.of()).stream())
                    .distinct()
                    .mapToInt(Integer::intValue)
                    .toArray())
        .toArray(int[][]::new);
  }

  /** Printing time on a press that takes the run, s. */
  public double printS(int run, int press) {
    return printS[press][run];
  }

  private double print(int run, int press) {
    PressSpec spec = problem.presses()[press];
    RunSpec.BeltFeed feed = problem.runs()[run].feeds()[spec.dryer()];
    DryerSpec dryer = problem.dryers()[spec.dryer()];
    double rate = spec.rate();
    if (feed.areaPerRate() > 0) {
      rate = Math.min(rate, (double) feed.speedLimit() / feed.areaPerRate());
    }
    if (feed.heatPerRate() > 0) {
      rate = Math.min(rate, (double) dryer.usableHeat() / feed.heatPerRate());
    }
    return problem.runs()[run].pieces() * 3600.0 / Math.max(1, rate);
  }

  /** Set-up, s. */
  public int setUpS(int before, int run, int press) {
    return setUps.seconds(before, run, problem.presses()[press]);
  }

  /** A bound that no set-up on a press passes, s. */
  public int longestSetUpS(int press) {
    return setUps.longest(problem.presses()[press]);
  }

  /**
   * The part of a run's set-up that comes behind every run without a common screen, s. What removes
   * the screens of the run before comes on top, and washing up.
   */
  private int ownSetUpS(int run, int press) {
    return setUps.isMeasured() ? 0 : setUps.onEmpty(run, problem.presses()[press]);
  }

  /** Time to remove the screens of a run, -1 for none; part of the next set-up, s. */
  private int removalS(int run, int press) {
    return setUps.isMeasured() || run < 0
        ? 0
        : setUps.stations(run) * problem.presses()[press].tearDownS();
  }

  /** Movable runs that have a screen in common with a run, itself among them. */
  public int[] runsOfScreens(int run) {
    return runsOfScreens[run];
  }

  /** From the last stroke of a press until the last garment is off the belt at the latest, s. */
  public int transitS(int press) {
    return problem.dryers()[problem.presses()[press].dryer()].transitS();
  }

  /** From the last stroke of a press until the garments may be printed again, s. */
  public int garmentsFreeS(int press) {
    return problem.dryers()[problem.presses()[press].dryer()].garmentsFreeS();
  }

  /** When a set-up begins that must not come to its first piece before a moment, s. */
  public int beginFor(int moment, int press, int setUpS) {
    PressSpec spec = problem.presses()[press];
    return spec.beginFor(moment, setUpS == 0 ? 0 : setUpS - spec.firstPieceS());
  }

  /**
   * When the set-up of a run begins on a press: not before the press is free, nor so soon that its
   * first piece comes before the garments, s.
   */
  public int beginOf(int run, int press, int free, int setUpS) {
    int garments = garmentsFrom[run];
    return free >= garments ? free : Math.max(free, beginFor(garments, press, setUpS));
  }

  /** When the press takes its first run: it is open, and free of what is taken over, s. */
  public int openAt(int press) {
    return Math.max(problem.presses()[press].openFrom(), problem.takenOver().pressFree()[press]);
  }

  /**
   * When a run is printed whose press has the dryer to itself, within one span (R3), s.
   *
   * @param before the run before it, -1 for none
   * @param free when the press is free, s
   * @return {@link StaffedTime#NEVER} if no span is long enough
   */
  public int endOf(int before, int run, int press, int free) {
    int setUpS = setUpS(before, run, press);
    int from = beginOf(run, press, free, setUpS);
    int work = (int) Math.ceil(setUpS + printS(run, press));
    return problem.presses()[press].staffed().addInSpan(from, work);
  }

  /** Movable runs on the same garments. */
  public List<Integer> runsOfLot(int lot) {
    return runsOfLot.get(lot);
  }

  /** Mean printing time over the presses that take each run, s. */
  public double meanPrintS() {
    double sum = 0;
    int count = 0;
    for (int run = 0; run < problem.movable(); run++) {
      for (int press = 0; press < problem.presses().length; press++) {
        if (problem.runs()[run].presses()[press]) {
          sum += printS(run, press);
          count++;
        }
      }
    }
    return count == 0 ? 1 : Math.max(1, sum / count);
  }

  /** Mean set-up over neighbouring pairs of runs, s. */
  public double meanSetUpS() {
    return meanOfPairs(this::setUpS);
  }

  /** Mean over the same pairs of what another run before would avoid, s; see {@link #ownSetUpS}. */
  public double meanAvoidableSetUpS() {
    return meanOfPairs(this::avoidableSetUpS);
  }

  /**
   * What another run before this one would avoid, s: washing up; below 0 for common screens. Where
   * set-ups were measured it is all of them.
   */
  public int avoidableSetUpS(int before, int run, int press) {
    return avoidableSetUpS(setUpS(before, run, press), before, run, press);
  }

  /** The same of a set-up that is known, s. */
  public int avoidableSetUpS(int setUpS, int before, int run, int press) {
    return setUpS - removalS(before, press) - ownSetUpS(run, press);
  }

  private double meanOfPairs(SetUpOf setUp) {
    double sum = 0;
    int count = 0;
    for (int run = 1; run < problem.movable(); run++) {
      for (int press = 0; press < problem.presses().length; press++) {
        if (problem.runs()[run].presses()[press]) {
          sum += setUp.seconds(run - 1, run, press);
          count++;
        }
      }
    }
    return count == 0 ? 0 : sum / count;
  }

  private interface SetUpOf {

    int seconds(int before, int run, int press);
  }
}
