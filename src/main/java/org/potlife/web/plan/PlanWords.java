package org.potlife.web.plan;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;
import java.time.LocalDate;

/** What the planner's screen says. */
@MessageBundle("sayPlan")
public interface PlanWords {

  @Message("Plan {version}, {day}")
  String title(int version, String day);

  @Message(
      "{#when word}{#is 'published'}in force{#is 'draft'}draft{#is 'superseded'}superseded{#is 'solving'}being made{#is 'failed'}no plan came out{#else}{word}{/when}")
  String state(String word);

  @Message("Without a place")
  String unplaced();

  @Message("Late, all orders")
  String lateAll();

  @Message("Late, weighted")
  String lateWeighted();

  @Message("Cost, {currency}")
  String cost(String currency);

  @Message("Audit")
  String audit();

  @Message("passed")
  String auditPassed();

  @Message("rules broken")
  String auditBroken();

  @Message("No plan yet")
  String noneYet();

  @Message(
      "Choose a day and make a plan: a first one stands within seconds, and every second of search makes it better.")
  String noneYetHelp();

  @Message("The planner makes the plans; the first one appears here.")
  String noneYetRead();

  @Message("Plan")
  String which();

  @Message("{version}, {word}, {day}")
  String option(int version, String word, LocalDate day);

  @Message("Show")
  String show();

  @Message("Day")
  String day();

  @Message("Search, seconds")
  String seconds();

  @Message("Make a plan")
  String make();

  @Message("Publish")
  String publish();

  @Message("A newer plan has been asked for.")
  String newer();

  @Message("Not published")
  String refused();

  @Message(
      "Orders, set-up or reports have changed since this draft was made: make a new one, this one cannot be published.")
  String draftStale();

  @Message("Orders, set-up or reports have changed since this draft was made.")
  String draftStaleRead();

  @Message("The plan is being made")
  String searching();

  @Message("The search begins.")
  String curveEmpty();

  @Message("[0] without a place, [1] late (weighted), cost [2]")
  String curveNow();

  @Message("Stop and keep the best")
  String stop();

  @Message("No plan came out: {cause}")
  String failed(String cause);

  @Message("Drawing of the plan")
  String drawing();

  @Message("The drawing is on its way.")
  String drawingComes();

  @Message("The drawing needs scripts; the same is in the")
  String noScript();

  @Message("table")
  String table();

  @Message("Days of the plan")
  String days();

  @Message("Earlier")
  String earlier();

  @Message("Later")
  String later();

  @Message("Closer")
  String zoomIn();

  @Message("Wider")
  String zoomOut();

  @Message("Now")
  String now();

  @Message("Whole plan")
  String whole();

  @Message("Belts")
  String belts();

  @Message("Batches")
  String batches();

  @Message("Screen room")
  String screenRoom();

  @Message("Find")
  String find();

  @Message("Runs of the plan")
  String runsList();

  @Message("What is chosen")
  String chosen();

  @Message(
      "Point at a run, a batch, a load or a belt, or walk along with the arrow keys: what it waits for, its slack and its promise stand here, and what it touches stays bright.")
  String chooseHint();

  @Message("Enter gives instructions for the run; so does dragging it onto a place or another run.")
  String keysInstruct();

  @Message(
      "With the keyboard: left and right go along a press, up and down change the press, plus and minus zoom, Shift with left and right pans, 0 shows the whole plan, Escape lets go. With the mouse: dragging the ground pans, Ctrl with the wheel zooms.")
  String keys();

  @Message("Stripes: the run's inks")
  String legendRun();

  @Message("Hatched: set-up, or stand time")
  String legendSetUp();

  @Message("Hatched ground: nobody at the press; dots above: overtime")
  String legendClosed();

  @Message("order ends late")
  String legendLate();

  @Message("taken over from the plan before, stays")
  String legendFrozen();

  @Message("Belt: filled area in use, dashed heat, line 100 %")
  String legendBelt();

  @Message("Batch: thick end is its use-by, band while it is drawn from")
  String legendBatch();

  @Message("Late orders: {late}. Prints without a place: {unplaced}")
  String lateHead(int late, int unplaced);

  @Message("Every order has its place and is in time.")
  String lateNone();

  @Message("Late orders")
  String lateOrders();

  @Message("Order")
  String order();

  @Message("Due")
  String due();

  @Message("Off the belt")
  String offBelt();

  @Message("Late by")
  String lateBy();

  @Message("Cause")
  String cause();

  @Message("What would help")
  String help();

  @Message("Prints without a place")
  String unplacedPrints();

  @Message("Design")
  String design();

  @Message("Against the plan before: {moved} runs move, {promises} promises change")
  String changesHead(int moved, int promises);

  @Message("Runs that move")
  String movedPercent();

  @Message("Change the press")
  String pressChanges();

  @Message("Promises that change")
  String promisesChanged();

  @Message("Off the belt before")
  String offBeltBefore();

  @Message("Off the belt now")
  String offBeltNow();

  @Message("Late before")
  String lateBefore();

  @Message("Late now")
  String lateNow();

  @Message("Runs that move")
  String runsMoved();

  @Message("Run")
  String run();

  @Message("Before")
  String before();

  @Message("Now at")
  String nowAt();

  @Message("New: {runs}")
  String added(String runs);

  @Message("No longer on the plan: {runs}")
  String gone(String runs);

  @Message("Nothing moves.")
  String nothingMoved();

  @Message("Cost by kind")
  String costHead();

  @Message("Kind")
  String kind();

  @Message("The plan as a table, {runs} runs")
  String tableHead(int runs);

  @Message("Press")
  String press();

  @Message("Set-up")
  String setUp();

  @Message("Printing")
  String printing();

  @Message("Pieces")
  String pieces();

  @Message("Inks")
  String inks();

  @Message("Promise")
  String promise();

  @Message("Waits")
  String waits();

  @Message("late by {by}")
  String late(String by);

  @Message("in time, {minutes} slack")
  String slackOf(String minutes);

  @Message("waits for nothing")
  String waitsNot();

  @Message("Dryer")
  String dryer();

  @Message("From")
  String from();

  @Message("To")
  String to();

  @Message("Speed")
  String speed();

  @Message("Area")
  String area();

  @Message("Heat")
  String heat();

  @Message("Ink")
  String ink();

  @Message("Batch")
  String batch();

  @Message("Activate from")
  String activateFrom();

  @Message("Mix from")
  String mixFrom();

  @Message("Ready at")
  String readyAt();

  @Message("Use by")
  String useBy();

  @Message("Serves")
  String serves();

  @Message("no clock")
  String noClock();

  @Message("Cabinet")
  String cabinet();

  @Message("Dry at")
  String dryAt();

  @Message("Screens")
  String screens();

  @Message("Stage")
  String stage();

  @Message("Sheets to print")
  String sheets();
}
