package org.potlife.web.room;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** What the rooms' screens say. */
@MessageBundle("sayRoom")
public interface RoomWords {

  @Message("Who")
  String who();

  @Message("Labels to print")
  String labels();

  @Message("Sheet to print")
  String sheet();

  @Message("Past its use-by and still there")
  String overdue();

  @Message("use by")
  String useBy();

  @Message("{grams} g left")
  String left(int grams);

  @Message("discarded")
  String discarded();

  @Message("pot life over")
  String potLifeOver();

  @Message("Discard")
  String discard();

  @Message(
      "No plan is in force. The planner publishes one on the plan's screen; the list appears here by itself.")
  String noPlan();

  @Message("No ink is mixed or activated on this day.")
  String noInk();

  @Message("All batches of this day are emptied or discarded.")
  String allGone();

  @Message("Batches, the most urgent first")
  String inkList();

  @Message(
      "{#when state}{#is MIX}Mix from{#is ACTIVATE}Activate from{#is STANDING}Stands until{#is IN_USE}Use by{#is GONE}Gone{/when}")
  String inkStep(InkJob.State state);

  @Message("from the shelf")
  String shelf();

  @Message("agent")
  String agent();

  @Message("ready at")
  String readyAt();

  @Message("no agent, no clock")
  String noClock();

  @Message("once had agent: for light garments alone; the cautions for ink with agent hold")
  String onceHadAgent();

  @Message(
      "Have the exhaust running at press and dryer before discharge ink is printed: it gives off"
          + " formaldehyde and sulphur dioxide, most of all in the dryer. Belt, tunnel and fresh"
          + " prints are hot. Stop the press before reaching into it. Safety data sheets, the makers'"
          + " manuals and local rules come first; this page declares nothing safe.")
  String pressCaution();

  @Message("mixer {number}")
  String mixer(int number);

  @Message("Weigh in this order")
  String weigh();

  @Message("Component")
  String component();

  @Message("Scale shows")
  String scale();

  @Message("agent, {percent} %, last")
  String agentLast(String percent);

  @Message("Mixed")
  String mixed();

  @Message("Activated")
  String activated();

  @Message("Stands: do not use yet")
  String doNotUse();

  @Message("Emptied")
  String emptied();

  @Message("Reason")
  String reason();

  @Message("not needed any more")
  String notNeeded();

  @Message("soiled")
  String soiled();

  @Message("mixed wrong")
  String wrongMix();

  @Message("Grams, if weighed")
  String discardG();

  @Message("Emptied or discarded: {number}")
  String goneOnes(int number);

  @Message("Keep in mind")
  String cautions();

  @Message("Stages")
  String stages();

  @Message("All")
  String all();

  @Message("Fetch kept stencil")
  String fetch();

  @Message("The screen room has nothing to do on this day.")
  String noScreens();

  @Message("All of this is done.")
  String allDone();

  @Message("Screens, in working order")
  String screenList();

  @Message("dry at")
  String dryAt();

  @Message("{#if number == 1}1 screen{#else}{number} screens{/if}")
  String screensOf(int number);

  @Message("door shut by")
  String doorShut();

  @Message("takes {frames} frames")
  String capacity(int frames);

  @Message("{#if look == 'dry'}seen dry{#else}seen wet{/if}")
  String lastLook(String look);

  @Message("Does not dry since {time}: {humidity} % humidity, the limit is {limit} %.")
  String tooHumid(String time, String humidity, String limit);

  @Message("for {run} on {press}")
  String forRun(String run, String press);

  @Message("at the latest")
  String latest();

  @Message("{minutes} slack")
  String slack(String minutes);

  @Message("station {number}")
  String station(int number);

  @Message("Dry")
  String dry();

  @Message("Still wet")
  String stillWet();

  @Message("Done")
  String doneWord();

  @Message("Broken screen")
  String broken();

  @Message(
      "It is made anew, and plans made before are old. For a torn mesh lower the number of frames in the shop's set-up.")
  String brokenHelp();

  @Message("Show {number} more")
  String further(int number);

  @Message("Choose the screen")
  String chooseScreen();

  @Message("Done: {number}")
  String doneOnes(int number);

  @Message("Air")
  String air();

  @Message(
      "Above {limit} % humidity the emulsion does not dry. A reading holds until the next one.")
  String airHelp(String limit);

  @Message("Place")
  String place();

  @Message("Store of coated screens")
  String store();

  @Message("Screen room")
  String theRoom();

  @Message("Cabinet {id}")
  String cabinet(String id);

  @Message("Temperature, {unit}")
  String temperature(String unit);

  @Message("Humidity, %")
  String humidity();

  @Message("Book")
  String book();

  @Message("Choose a press")
  String choosePress();

  @Message("Out of service.")
  String outOfService();

  @Message("No run on this day.")
  String noRun();

  @Message("{#if runs == 1}1 run{#else}{runs} runs{/if}, {pieces} pieces")
  String runsOf(int runs, int pieces);

  @Message("Belts to print")
  String belts();

  @Message("Press {id}")
  String press(String id);

  @Message("All presses")
  String allPresses();

  @Message("Runs of press {id}, in order")
  String pressList(String id);

  @Message("Set-up from")
  String setUp();

  @Message("Print from")
  String print();

  @Message("off the belt")
  String offBelt();

  @Message("{number} pieces")
  String pieces(int number);

  @Message("lot {lot} of {lots}")
  String lot(int lot, int lots);

  @Message("order late by {by}")
  String late(String by);

  @Message("{perHour} an hour")
  String rate(int perHour);

  @Message("{number} strokes per colour")
  String passes(int number);

  @Message("{#if number == 1}1 flash{#else}{number} flashes{/if}")
  String flashes(int number);

  @Message("Station")
  String stationHead();

  @Message("Ink")
  String ink();

  @Message("Screen")
  String screen();

  @Message("Batch")
  String batches();

  @Message("kept stencil")
  String kept();

  @Message("Belt")
  String belt();

  @Message("({seconds} s in the tunnel) from")
  String inTunnel(int seconds);

  @Message("On the belt within {seconds} s of the last stroke, {lanes} lanes.")
  String toBelt(int seconds, int lanes);

  @Message("Started")
  String started();

  @Message("Count")
  String count();

  @Message("counted")
  String counted();

  @Message("Good")
  String good();

  @Message("Spoiled")
  String spoiled();

  @Message("Finished")
  String finished();

  @Message("First piece approved")
  String firstPiece();

  @Message("Started")
  String begun();

  @Message("{good} good, {spoiled} spoiled")
  String soFar(int good, int spoiled);

  @Message("Good so far")
  String goodSoFar();

  @Message("Spoiled pieces found")
  String spoil();

  @Message("Pieces")
  String piecesWord();

  @Message("Works again")
  String worksAgain();

  @Message("The press stands still")
  String pressDown();

  @Message("Down since")
  String isDown();
}
