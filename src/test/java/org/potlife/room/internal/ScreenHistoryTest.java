package org.potlife.room.internal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.event.ShopEvent;
import org.potlife.room.ScreenLife;
import org.potlife.room.ScreenStatus;
import org.potlife.room.ScreenStatus.Basis;
import org.potlife.screen.KeptStencil;

class ScreenHistoryTest {

  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

  private static ShopEvent event(int minute, String type, String data) throws Exception {
    return new ShopEvent(
        "plant",
        "/room",
        type + minute,
        type,
        Instant.parse("2026-12-01T08:00:00Z").plusSeconds(60L * minute),
        new ObjectMapper().readTree(data.replace('\'', '"')));
  }

  private static ScreenStatus loaf(ShopEvent... events) {
    ScreenDraft draft = new ScreenDraft("K-loaf");
    draft.kept(new KeptStencil("K-loaf", "loaf", "chalk", 43.0, 80.0));
    return draft.status(ScreenHistory.of(List.of(events), ZONE));
  }

  @Test
  void withoutAReportTheStateIsThePlansOrTheSetUps() {
    assertThat(loaf().state()).isEqualTo(ScreenLife.READY);
    assertThat(loaf().basis()).isEqualTo(Basis.PLANNED);
  }

  @Test
  void theLastReportCounts() throws Exception {
    ScreenStatus status =
        loaf(
            event(0, "screen.moved", "{'screen':'K-loaf','state':'on-press','frame':'F7'}"),
            event(9, "screen.moved", "{'screen':'K-loaf','state':'to-reclaim','person':'Mia'}"),
            event(10, "screen.moved", "{'screen':'other','state':'ready'}"));

    assertThat(status.state()).isEqualTo(ScreenLife.TO_RECLAIM);
    assertThat(status.basis()).isEqualTo(Basis.REPORTED);
    assertThat(status.since()).isEqualTo("2026-12-01T09:09:00+01:00");
    assertThat(status.frame()).isEqualTo("F7");
    assertThat(status.history()).hasSize(2);
    assertThat(status.history().get(1).person()).isEqualTo("Mia");
  }

  @Test
  void aBrokenScreenIsBroken() throws Exception {
    assertThat(loaf(event(0, "screen.broken", "{'screen':'K-loaf'}")).state())
        .isEqualTo(ScreenLife.BROKEN);
  }

  @Test
  void theTensionOfTheFrameIsTheScreens() throws Exception {
    ShopEvent moved = event(1, "screen.moved", "{'screen':'K-loaf','state':'ready','frame':'F7'}");
    ShopEvent own = event(2, "screen.tension", "{'screen':'K-loaf','newtonPerCm':24}");
    ShopEvent frames = event(3, "screen.tension", "{'frame':'F7','newtonPerCm':22.5}");
    ShopEvent others = event(4, "screen.tension", "{'frame':'F8','newtonPerCm':12}");

    assertThat(loaf(moved, own, frames, others).newtonPerCm()).isEqualTo(22.5);
    assertThat(loaf(moved, own, others).newtonPerCm()).isEqualTo(24);
    assertThat(loaf(frames).newtonPerCm()).isNull();
  }
}
