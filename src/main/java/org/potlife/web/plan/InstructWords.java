package org.potlife.web.plan;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** What is said where the planner decides something himself. */
@MessageBundle("sayInstruct")
public interface InstructWords {

  @Message("Instructions")
  String instruct();

  @Message("Only on press")
  String onlyPress();

  @Message("any")
  String anyPress();

  @Message("Before another run")
  String beforeRun();

  @Message("any order")
  String anyOrder();

  @Message("before [0]")
  String beforeItem();

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
      "The next plan follows these. What has begun or is about to begin stays as it is. Drag a run onto a press and a time, or onto the run that it is to come before, or choose it and use the form beside the drawing.")
  String instructHelp();

  @Message("The planner has decided these himself; the next plan follows them.")
  String instructRead();

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
