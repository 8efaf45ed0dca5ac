package org.potlife.web.plan;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** What the drawing of a plan says of what is chosen in it. */
@MessageBundle("sayDrawing")
public interface DrawingWords {

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
}
