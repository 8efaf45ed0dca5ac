package org.potlife.outside;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.potlife.outside.BareShop.SetUpMinutes;
import org.potlife.simulation.Problem;

/**
 * A small shop with all that couples its runs: two presses that change over at different speed,
 * shifts with nights between them, orders with a front and a back on the same garments, a design
 * that two orders share, garments and screens that come later, and one dryer. All times in minutes;
 * a press prints a piece a minute and never slower.
 *
 * @param presses set-ups by press
 * @param shifts starts and ends in turn, the same for all presses
 * @param transit on the belt after the last stroke
 * @param cool until the garments may be printed again
 * @param belt fastest belt
 * @param lightness lightness by ink
 */
public record CompleteCase(
    SetUpMinutes[] presses,
    int[] shifts,
    int transit,
    int cool,
    int belt,
    int[] lightness,
    List<Order> orders,
    List<Screens> sets,
    List<Run> runs) {

  /** An order: when it is due and what a late minute weighs. */
  public record Order(int due, int weight) {}

  /** A set of screens: the ink at each station, and when it is ready. */
  public record Screens(int[] inks, int ready) {}

  /**
   * A run. Runs of one order are on the same garments.
   *
   * @param from when the garments are in house
   * @param stage place among the prints of its order if they have a listed order, else -1
   * @param beltPerPiece belt length of a piece
   * @param speedLimit fastest belt for its dwell
   */
  public record Run(
      int order, int set, int pieces, int from, int stage, int beltPerPiece, int speedLimit) {}

  private static final int BELT = 100;
  private static final int SLOW_BELT = 80;
  private static final int ROOMY_BELT = 1_000_000;
  private static final int SHIFTS = 4;

  /** Belt that a printing press takes. */
  private static final int PER_PRESS = 60;

  private static final int SLOWER = 20;
  private static final int DAY_MINUTES = 1440;
  private static final int SHIFT_MINUTES = 960;

  /** Set-up and print of an average run. */
  private static final int MINUTES_PER_RUN = 55;

  /**
   * A random case of eight runs, or of six where the dryer is tight, since the proof is harder.
   *
   * @param tightDryer whether the belt takes one printing press at a time; beside it only the trial
   *     pieces of the other press have room, unless one of the two runs dwells long
   */
  public static CompleteCase random(long seed, boolean tightDryer) {
    Random random = new Random(seed);
    List<Order> orders = new ArrayList<>();
    List<Screens> sets = new ArrayList<>();
    List<Run> runs = new ArrayList<>();
    int count = tightDryer ? 4 : 6;
    for (int order = 0; order < count; order++) {
      orders.add(new Order(60 + random.nextInt(500), 1 << random.nextInt(3)));
      int from = random.nextInt(3) == 0 ? random.nextInt(150) : 0;
      int prints = order < 2 ? 2 : 1;
      for (int print = 0; print < prints; print++) {
        int set = sets.size() - 1;
        boolean sharesDesign = order == count - 1;
        if (!sharesDesign) {
          set++;
          sets.add(new Screens(inks(random), random.nextInt(3) == 0 ? random.nextInt(90) : 0));
        }
        runs.add(
            new Run(
                order,
                set,
                15 + random.nextInt(45),
                from,
                order == 0 ? print : -1,
                tightDryer ? 1 : 0,
                tightDryer ? (random.nextInt(3) == 0 ? SLOW_BELT : BELT) : ROOMY_BELT));
      }
    }
    return new CompleteCase(
        new SetUpMinutes[] {
          new SetUpMinutes(6, 3, 1, 2, 4, 4, 2), new SetUpMinutes(3, 4, 2, 3, 5, 4, 2)
        },
        shortDays(),
        3,
        10,
        tightDryer ? BELT : ROOMY_BELT,
        new int[] {20, 50, 80, 50},
        orders,
        sets,
        runs);
  }

  /**
   * A case of any size: a front and a back on a fifth of the orders, one design in twelve printed
   * again, dates at which a good plan is a little late.
   *
   * @param tightDryer whether the dryer carries all presses but one and the trial of that, else it
   *     carries all
   */
  public static CompleteCase ofSize(int count, int presses, boolean tightDryer, long seed) {
    Random random = new Random(seed * 7919 + count);
    List<Order> orders = new ArrayList<>();
    List<Screens> sets = new ArrayList<>();
    List<Run> runs = new ArrayList<>();
    int belt = tightDryer ? PER_PRESS * presses - SLOWER : ROOMY_BELT;
    int days = (int) Math.ceil(count * MINUTES_PER_RUN / (presses * (double) SHIFT_MINUTES));
    while (runs.size() < count) {
      int worked = 40 + (int) (0.8 * random.nextInt(count * MINUTES_PER_RUN / presses));
      int dueDay = worked / SHIFT_MINUTES;
      int due = dueDay * DAY_MINUTES + worked % SHIFT_MINUTES;
      orders.add(new Order(due, 1 << random.nextInt(3)));
      int from = Math.max(0, dueDay - 1 - random.nextInt(2)) * DAY_MINUTES;
      int prints = runs.size() + 1 < count && random.nextInt(5) == 0 ? 2 : 1;
      boolean listed = random.nextBoolean();
      for (int print = 0; print < prints; print++) {
        int set = random.nextInt(12) == 0 && !sets.isEmpty() ? random.nextInt(sets.size()) : -1;
        if (set < 0) {
          set = sets.size();
          sets.add(new Screens(inks(random), 0));
        }
        int limit = tightDryer && random.nextInt(4) == 0 ? belt - SLOWER : belt;
        int stage = listed && prints > 1 ? print : -1;
        runs.add(
            new Run(
                orders.size() - 1,
                set,
                15 + random.nextInt(45),
                from,
                stage,
                tightDryer ? 1 : 0,
                limit));
      }
    }
    SetUpMinutes[] setUps = new SetUpMinutes[presses];
    for (int press = 0; press < presses; press++) {
      setUps[press] =
          press % 2 == 0
              ? new SetUpMinutes(6, 3, 1, 2, 4, 4, 2)
              : new SetUpMinutes(3, 4, 2, 3, 5, 4, 2);
    }
    return new CompleteCase(
        setUps, days(days + 2), 3, 10, belt, new int[] {20, 50, 80, 50}, orders, sets, runs);
  }

  private static int[] days(int count) {
    int[] shifts = new int[2 * count];
    for (int day = 0; day < count; day++) {
      shifts[2 * day] = DAY_MINUTES * day;
      shifts[2 * day + 1] = DAY_MINUTES * day + SHIFT_MINUTES;
    }
    return shifts;
  }

  private static int[] inks(Random random) {
    return random.ints(1 + random.nextInt(3), 0, 4).toArray();
  }

  private static int[] shortDays() {
    int[] shifts = new int[2 * SHIFTS];
    for (int day = 0; day < SHIFTS; day++) {
      shifts[2 * day] = 600 * day;
      shifts[2 * day + 1] = 600 * day + 220;
    }
    return shifts;
  }

  /** The case as our engine sees it. */
  public Problem problem() {
    BareShop shop =
        BareShop.presses(presses).shifts(shifts).dryer(belt, transit, cool).inks(lightness);
    orders.forEach(order -> shop.order(order.due(), order.weight()));
    sets.forEach(set -> shop.set(set.inks().length, set.ready()));
    for (Run run : runs) {
      shop.run(run.order(), run.pieces())
          .lot(run.order())
          .stage(run.stage())
          .from(run.from())
          .screens(run.set(), sets.get(run.set()).inks())
          .belt(run.beltPerPiece(), run.speedLimit());
    }
    return shop.problem();
  }
}
