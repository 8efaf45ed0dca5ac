package org.potlife.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** What the day's end says. */
@MessageBundle("sayDay")
public interface DayWords {

  @Message(
      "This day has not begun: nothing is told of it yet. What is planned for it stands below.")
  String ahead();

  @Message("The day is still under way. Everything below is as told up to")
  String underWay();

  @Message("As told up to")
  String asOf();

  @Message(
      "Nothing is planned for this day, no order was due on it, and nothing is told of it. What the rooms and the press crews mark comes here by itself.")
  String silent();

  @Message("Nothing has happened yet: no run of this day is told to have begun.")
  String untold();

  @Message("On time in full")
  String onTime();

  @Message("{kept} of {due}")
  String keptOf(int kept, int due);

  @Message("no order was due")
  String noneDue();

  @Message("Good pieces")
  String goodPieces();

  @Message("Spoiled")
  String spoiled();

  @Message("Runs ended")
  String ended();

  @Message("Runs printing")
  String running();

  @Message("Runs without a mark")
  String notTold();

  @Message("Ink lost")
  String inkLost();

  @Message("Garments carried over")
  String carriedPieces();

  @Message("Only the first are shown where there are very many.")
  String isCut();

  @Message("Show all")
  String showAll();

  @Message("{shown} of {all} presses are shown.")
  String pressesCut(int shown, int all);

  @Message("{shown} of {all} orders are shown.")
  String ordersCut(int shown, int all);

  @Message("{shown} of {all} inks are shown, the most expensive losses first.")
  String inksCut(int shown, int all);

  @Message("{shown} of {all} runs are shown.")
  String runsCut(int shown, int all);

  @Message("Plan against actual")
  String planAgainstActual();

  @Message(
      "Two bars for each run, per press: above as planned, below as told. The table has the same times.")
  String drawingHelp();

  @Message("planned")
  String planned();

  @Message("set-up as told")
  String toldSetUp();

  @Message("printing as told")
  String toldPrint();

  @Message("still printing, up to now")
  String toldOn();

  @Message("[0] runs on [1] presses: [2] as planned and told, [3] only planned")
  String drawingSummary();

  @Message("planned [0] to [1]")
  String plannedFromTo();

  @Message("told [0] to [1]")
  String toldFromTo();

  @Message("now")
  String now();

  @Message("Press")
  String press();

  @Message("Run")
  String run();

  @Message("lot {lot}")
  String lot(int lot);

  @Message("State")
  String state();

  @Message("{#when word}{#is 'ended'}ended{#is 'running'}printing{#else}no mark{/when}")
  String stateWord(String word);

  @Message("Planned")
  String plannedTimes();

  @Message("Begun")
  String begun();

  @Message("Printing from")
  String printingFrom();

  @Message("Ended")
  String endedAt();

  @Message("Begun against plan")
  String startsOff();

  @Message("Ended against plan")
  String endsOff();

  @Message("Pieces planned")
  String piecesPlanned();

  @Message("Good")
  String good();

  @Message("Rate planned (/h)")
  String ratePlanned();

  @Message("Rate (/h)")
  String rate();

  @Message("last told")
  String lastTold();

  @Message("Figures of the presses")
  String figures();

  @Message(
      "After ISO 22400-2. A run counts wholly on the day of its end. A dash stands for a figure that has nothing to be divided by.")
  String figuresHelp();

  @Message("Figure")
  String figure();

  @Message("How it comes about")
  String formula();

  @Message("All presses")
  String allPresses();

  @Message(
      "{#when figure}{#is ALLOCATION}Allocation{#is UTILISATION}Utilisation{#is AVAILABILITY}Availability"
          + "{#is SET_UP_RATE}Set-up rate{#is EFFECTIVENESS}Effectiveness{#is QUALITY}Quality ratio"
          + "{#is SCRAP}Scrap ratio{#is OEE}OEE index{#is THROUGHPUT}Throughput{/when}")
  String figureName(IsoFigure figure);

  @Message(
      "{#when figure}{#is ALLOCATION}time with a run on the press, divided by staffed time"
          + "{#is UTILISATION}printing time, divided by time with a run on the press"
          + "{#is AVAILABILITY}printing time, divided by staffed time"
          + "{#is SET_UP_RATE}set-up time, divided by set-up and printing time"
          + "{#is EFFECTIVENESS}time that the pieces should have taken at the planned rate, divided by printing time"
          + "{#is QUALITY}good pieces, divided by printed pieces"
          + "{#is SCRAP}spoiled pieces, divided by printed pieces"
          + "{#is OEE}availability times effectiveness times quality ratio"
          + "{#is THROUGHPUT}printed pieces, divided by the time from each run's beginning to its end{/when}")
  String figureFormula(IsoFigure figure);

  @Message("Time and pieces of the presses")
  String times();

  @Message("Staffed (min)")
  String staffed();

  @Message("Run on it (min)")
  String busy();

  @Message("Set-up (min)")
  String setUp();

  @Message("Printing (min)")
  String printing();

  @Message("Down (min)")
  String down();

  @Message("{kept} of {due} orders that were due on this day were on time in full ({share}).")
  String keptSentence(int kept, int due, String share);

  @Message("No order was due on this day.")
  String noneDueSentence();

  @Message("Orders that are due later today count as missed until they are told to be done.")
  String dueLater();

  @Message("Order")
  String order();

  @Message("Due")
  String due();

  @Message("Ordered")
  String ordered();

  @Message("Why")
  String why();

  @Message("Not on time in full")
  String missed();

  @Message("Ink that came to nothing")
  String loss();

  @Message("No ink is told to have come to nothing on this day.")
  String noLoss();

  @Message(
      "Discarded and unaccounted for in batches that were done with on this day, and what is left of those whose pot life ended on it. Priced at the ink's cost per kg.")
  String lossHelp();

  @Message("Unaccounted for")
  String unaccounted();

  @Message("Past its pot life")
  String pastPotLife();

  @Message("Together")
  String together();

  @Message("Cost ({currency})")
  String cost(String currency);

  @Message("Grams of ink that came to nothing: [0]")
  String lossSummary();

  @Message("Carried over")
  String carriedOver();

  @Message("Planned for this day and not printed:")
  String carriedHelp();

  @Message("Nothing is carried over.")
  String nothingCarried();

  @Message("Garments left")
  String garmentsLeft();

  @Message("Promise of the plan in force")
  String promise();

  @Message("Ink of the day")
  String inkOfDay();

  @Message("Nothing was told of this day's ink.")
  String noInkTold();

  @Message("Made")
  String made();

  @Message("Printed")
  String printed();

  @Message("On screens")
  String onScreens();

  @Message("Returned")
  String returned();

  @Message("Discarded")
  String discarded();

  @Message("Lost")
  String lost();

  @Message("Should be left")
  String left();

  @Message("Not closed yet")
  String stillOpen();

  @Message("Closed")
  String closed();

  @Message("Batch")
  String batch();

  @Message("Ink")
  String ink();

  @Message("use by")
  String useBy();

  @Message("emptied")
  String emptied();

  @Message("Empty")
  String isEmpty();

  @Message("Discard")
  String discard();
}
