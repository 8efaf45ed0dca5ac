package org.potlife.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** What the office's screens say. */
@MessageBundle("sayOffice")
public interface OfficeWords {

  @Message(
      "{#when name}{#is 'PASSED'}passed{#is 'FAILED'}failed{#is 'OPEN'}not made yet{#else}not"
          + " needed{/when}")
  String trialWord(String name);

  @Message("Find")
  String find();

  @Message("State")
  String state();

  @Message(
      "{#when word}{#is 'open'}open{#is 'started'}printing{#is 'finished'}finished{#is 'cancelled'}cancelled{#else}all{/when}")
  String stateWord(String word);

  @Message("only late or without a place")
  String onlyLate();

  @Message("Show")
  String show();

  @Message("Take in a table")
  String takeTable();

  @Message("No order fits what is looked for.")
  String noneFound();

  @Message("Look at all orders instead")
  String lookAtAll();

  @Message("There is no order here yet.")
  String noOrders();

  @Message("There is no order in this state.")
  String noneInState();

  @Message(
      "The web shop or the ERP sends them over the interface, or you take in a table of them here.")
  String howOrdersCome();

  @Message("Orders {first} to {last} of {all}, by due date")
  String found(int first, int last, int all);

  @Message("Only the first 3000 orders are looked through: narrow it down by the state.")
  String cut();

  @Message("Order")
  String order();

  @Message("Customer")
  String customer();

  @Message("Garments")
  String garments();

  @Message("Pieces")
  String pieces();

  @Message("Prints")
  String prints();

  @Message("Priority")
  String priority();

  @Message("Due")
  String due();

  @Message("Promise")
  String promise();

  @Message("not on the plan in force")
  String notPlanned();

  @Message("has no place")
  String noPlace();

  @Message("late by {by}")
  String lateBy(String by);

  @Message("Pages")
  String pages();

  @Message("Page {page} of {pages}")
  String pageOf(int page, int pages);

  @Message("First page")
  String pageFirst();

  @Message("Last page")
  String pageLast();

  @Message("Page before")
  String pageBefore();

  @Message("Next page")
  String pageNext();

  @Message("{number} in the carton")
  String blanks(int number);

  @Message("{cotton} % cotton, dye: {dye}")
  String cloth(String cotton, String dye);

  @Message("in house from")
  String inHouse();

  @Message("Design")
  String design();

  @Message("Process")
  String process();

  @Message("Size")
  String size();

  @Message("Colours")
  String colours();

  @Message("Artwork")
  String artwork();

  @Message("Trial print")
  String trial();

  @Message("approved")
  String approved();

  @Message("not approved")
  String notApproved();

  @Message("Runs on the plan in force")
  String runs();

  @Message("The plan in force has no run of this order.")
  String noRuns();

  @Message("Run")
  String run();

  @Message("Press")
  String press();

  @Message("Set-up")
  String setUp();

  @Message("Print")
  String print();

  @Message("Off the belt")
  String offBelt();

  @Message("Waits")
  String waits();

  @Message(
      "One row per print; rows with the same reference are one order. Nothing is stored before you have seen what is wrong: all orders are taken, or none.")
  String tableHelp();

  @Message("CSV file")
  String file();

  @Message("or paste the table here")
  String orPaste();

  @Message("Look through")
  String look();

  @Message("Columns of the table")
  String columns();

  @Message(
      "Times without an offset are the plant's. A colour is written ink:coverage:mesh-thread, for example brick:22:43-80; several are separated by |.")
  String columnsHelp();

  @Message("[0] orders with [1] prints can be taken.")
  String goodTable();

  @Message("[0] places must be put right first; nothing is stored.")
  String badTable();

  @Message("Row")
  String row();

  @Message("Column")
  String column();

  @Message("What is wrong")
  String wrong();

  @Message("Take in [0] orders")
  String send();

  @Message("[0] orders are taken in.")
  String sent();

  @Message("Choose a file or paste a table first.")
  String emptyTable();

  @Message(
      "Each figure says its unit, what holds when it is left empty, and where it comes from. What is stored makes plans made before old.")
  String shopHelp();

  @Message("The set-up is on its way.")
  String shopComes();

  @Message("Save")
  String save();

  @Message("Read again, drop my changes")
  String readAgain();

  @Message("Saved.")
  String saved();

  @Message("Somebody else has changed the set-up since. Read it again and repeat your changes.")
  String changedBefore();

  @Message("[0] values cannot be taken; nothing is stored.")
  String wrongValues();

  @Message("Not saved yet")
  String changes();

  @Message("Add")
  String add();

  @Message("Remove")
  String remove();

  @Message("left empty: [0]")
  String byDefault();

  @Message("from [0]")
  String comesFrom();

  @Message("yes")
  String yes();
}
