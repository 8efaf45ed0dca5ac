package org.potlife.web.room;

import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.plan.list.ScreenList.Frame;
import org.potlife.plan.list.ScreenList.Load;

/**
 * One thing that the screen room does: a stage of a set, a cabinet load, or a stencil to fetch.
 *
 * @param kind hands, load or fetch
 * @param step stage as on the sheet; {@code fetch} for a kept stencil
 * @param from earliest start; for a stencil when it is needed
 * @param to when it is planned to be through
 * @param latestFrom latest start that still meets the run; may be unknown
 * @param slackMinutes how much later it may start; may be unknown
 * @param where places used
 * @param run first run that takes the screens, as people call it
 * @param load the load; null unless it is one
 * @param done whether it is reported to be done
 * @param last what was seen last, in words; empty when nothing was
 * @param marks what can be marked, the likeliest first
 */
public record ScreenJob(
    String kind,
    String step,
    OffsetDateTime from,
    OffsetDateTime to,
    OffsetDateTime latestFrom,
    Long slackMinutes,
    List<String> where,
    String run,
    String press,
    OffsetDateTime setUpStart,
    List<Frame> frames,
    Load load,
    boolean done,
    String last,
    List<MarkButton> marks) {

  public boolean drying() {
    return "load".equals(kind);
  }

  public boolean fetching() {
    return "fetch".equals(kind);
  }

  /** A name that may stand in a page as an id. */
  public String anchor() {
    String first = frames.isEmpty() ? "" : frames.get(0).screen();
    return "s" + Integer.toHexString((kind + step + from + first).hashCode());
  }
}
