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

  @Message(
      "With the keyboard: left and right go along a press, up and down change the press, plus and minus zoom, Shift with left and right pans, 0 shows the whole plan, Enter gives instructions, Escape lets go. With the mouse: drag pans, Ctrl with the wheel zooms.")
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

  @Message("Presses that feed dryer [0]")
  String groupHead();

  @Message("Ink batches")
  String batchesHead();

  @Message("Drying cabinets")
  String loadsHead();

  @Message("[0] area")
  String beltArea();

  @Message("and heat")
  String beltHeat();

  @Message("out of service")
  String outOfService();

  @Message("degreased")
  String loadDegreased();

  @Message("coated")
  String loadCoated();

  @Message("washed out")
  String loadWashed();

  @Message("Customer")
  String customer();

  @Message("Garments")
  String garments();

  @Message("Slack")
  String slack();

  @Message("Other runs of the order")
  String others();

  @Message("none")
  String none();

  @Message("the order is not known any more")
  String noPromise();

  @Message("due [0], the order is late by [1]")
  String promiseLate();

  @Message("due [0], in time")
  String promiseKept();

  @Message("Waiting: [0]")
  String waitsFor();

  @Message("[0] pieces")
  String piecesOf();

  @Message("[0] an hour")
  String perHour();

  @Message("held back by the dryer")
  String byDryer();

  @Message("stays as published")
  String frozen();

  @Message("Batch of [0], [1]")
  String batchTitle();

  @Message("Mass")
  String mass();

  @Message("[0]: [1] screens, [2]")
  String loadTitle();

  @Message("In the cabinet")
  String doorShut();

  @Message("Belt of [0]")
  String beltTitle();

  @Message("Time")
  String time();

  @Message("No run with [0].")
  String notFound();

  @Message("Instructions")
  String instruct();

  @Message("Only on press")
  String onlyPress();

  @Message("any")
  String anyPress();

  @Message("No earlier than")
  String earliest();

  @Message("Hold it here")
  String keepHere();

  @Message("Set free")
  String setFree();

  @Message("Split the order into lots, at least")
  String inLots();

  @Message("Hold the order back")
  String holdBack();

  @Message("Try it")
  String tryOut();

  @Message("Apply")
  String apply();

  @Message(
      "The next plan follows these. What has begun or is about to begin stays as it is. Drag a run onto a press and a time, or choose it and use the form beside the drawing.")
  String instructHelp();

  @Message("Order [0] is held back")
  String heldItem();

  @Message("Order [0] in at least [1] lots")
  String lotsItem();

  @Message("only on [0]")
  String onPress();

  @Message("not before [0]")
  String notBefore();

  @Message("Remove")
  String remove();

  @Message("Instructions for the next plan: [0]")
  String instructionsHead();

  @Message("Instructions for [0]")
  String instructFor();

  @Message("Two short searches are running, one with and one without.")
  String trying();

  @Message("without a place: [0], then [1]")
  String effectUnplaced();

  @Message("late, all orders: [0], then [1]")
  String effectLate();

  @Message("cost: [0], then [1]")
  String effectCost();

  @Message("activated ink lost: [0], then [1]")
  String effectInk();

  @Message("runs that start elsewhere or at another time: [0]")
  String effectMoved();

  @Message("[0]: late by [1], then [2]")
  String effectOrder();

  @Message("Instructed. Make a plan to see it carried out.")
  String instructed();

  @Message("Somebody else has changed the instructions; they are read again.")
  String instructedBefore();

  @Message("[0], from [1]")
  String dropAt();

  @Message("instructed by the planner")
  String legendInstructed();
}
