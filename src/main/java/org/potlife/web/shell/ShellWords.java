package org.potlife.web.shell;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** What the frame of the screens says. */
@MessageBundle("say")
public interface ShellWords {

  @Message(
      "{#when job}{#is PLAN}Plan{#is INK_ROOM}Ink room{#is SCREEN_ROOM}Screen room{#is PRESSES}"
          + "Presses{#is ORDERS}Orders{#is SHOP}Shop{#is DAYS_END}Day's end{/when}")
  String job(Job job);

  @Message("Rooms and desks")
  String rooms();

  @Message("Go to the content")
  String skip();

  @Message("All plants")
  String allPlants();

  @Message("Change plant, now {name}")
  String changePlant(String name);

  @Message("live")
  String live();

  @Message("connecting")
  String connecting();

  @Message("No connection since [0]. What you see may be old; marks are kept and sent later.")
  String lost();

  @Message("no connection")
  String lostShort();

  @Message("waiting to be sent: [0]")
  String queued();

  @Message("Orders, set-up or reports have changed since the plan in force was made.")
  String stale();

  @Message("Go to the plan")
  String toThePlan();

  @Message("Units and clock")
  String manner();

  @Message("Units")
  String units();

  @Message("Clock")
  String clock();

  @Message("mm, m/min, °C")
  String metric();

  @Message("in, ft/min, °F")
  String us();

  @Message("24 hours")
  String hours24();

  @Message("12 hours")
  String hours12();

  @Message("Keep on this device")
  String keep();

  @Message("Times are those of the plant, {zone}.")
  String zone(String zone);

  @Message("Undo")
  String undo();

  @Message("[0]. Sent in a moment.")
  String sending();

  @Message("[0]: booked.")
  String booked();

  @Message("[0]: not booked. [1]")
  String refused();

  @Message("[0]: taken back.")
  String undone();

  @Message("[0]: no connection; it is kept and sent later.")
  String kept();

  @Message("over by [0]")
  String over();

  @Message("in [0]")
  String in();

  @Message("This needs the service, which does not answer. Try again.")
  String noAnswer();

  @Message("Day before")
  String dayBefore();

  @Message("Day after")
  String dayAfter();

  @Message("Today")
  String today();

  @Message("Print")
  String print();
}
