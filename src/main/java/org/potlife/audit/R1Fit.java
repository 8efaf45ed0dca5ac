package org.potlife.audit;

import java.util.List;
import org.potlife.ink.Ink;
import org.potlife.order.Print;
import org.potlife.shop.Press;

/**
 * R1: the design fits the press, and the garment fits the belt: colours and flashes on the
 * stations, the image (not turned) on the print area, process and kind of garment allowed, press in
 * service.
 */
final class R1Fit implements Rule {

  @Override
  public String number() {
    return "R1";
  }

  @Override
  public String title() {
    return "Fit";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    for (RunFacts run : evidence.runs()) {
      Press press = run.press();
      Print print = run.print();
      int stations = print.colours().size() + print.flashes();
      notes.check(
          stations <= press.stations(),
          run.id(),
          "needs %d stations, press %s has %d",
          stations,
          press.id(),
          press.stations());
      notes.check(
          print.widthMm() <= press.printWidthMm() && print.heightMm() <= press.printHeightMm(),
          run.id(),
          "image of %d x %d mm, press %s prints %d x %d mm",
          print.widthMm(),
          print.heightMm(),
          press.id(),
          press.printWidthMm(),
          press.printHeightMm());
      notes.check(
          press.processes().contains(print.process()),
          run.id(),
          "prints %s, press %s takes only %s",
          print.process(),
          press.id(),
          press.processes());
      notes.check(
          press.garmentKinds().isEmpty()
              || press.garmentKinds().contains(run.order().garments().kind()),
          run.id(),
          "prints on a %s, press %s takes only %s",
          run.order().garments().kind(),
          press.id(),
          press.garmentKinds());
      notes.check(press.inService(), run.id(), "press %s is out of service", press.id());
      notes.check(
          run.lanes() >= 1,
          run.id(),
          "garment %d mm wide, the belt of %s is %d mm wide",
          run.order().garments().widthMm(),
          run.dryer().id(),
          run.dryer().beltWidthMm());
      List<String> inks = run.inks().stream().map(Ink::id).toList();
      notes.check(
          inks.equals(run.line().inks()),
          run.id(),
          "carries the inks %s, the order asks for %s",
          run.line().inks(),
          inks);
    }
  }
}
