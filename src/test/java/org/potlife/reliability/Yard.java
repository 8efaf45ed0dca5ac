package org.potlife.reliability;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import org.potlife.Documents;
import org.potlife.testing.PackagedService;

/** The plant of the scenarios: a small shop that works every day, and orders for next week. */
final class Yard {

  static final String ID = "yard";
  static final String PATH = "/api/v1/plants/" + ID;

  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  private static final String WEEK =
      "[\"MONDAY\",\"TUESDAY\",\"WEDNESDAY\",\"THURSDAY\",\"FRIDAY\",\"SATURDAY\",\"SUNDAY\"]";

  private Yard() {}

  static void setUp(PackagedService service) throws IOException, InterruptedException {
    String shop = Documents.SHOP.replace("[\"MONDAY\",\"TUESDAY\"]", WEEK);
    HttpResponse<String> answer =
        service.send(
            service
                .request(PATH + "/shop")
                .header("Content-Type", "application/json")
                .PUT(BodyPublishers.ofString(shop)));
    if (answer.statusCode() != 201) {
      throw new AssertionError(answer.body());
    }
  }

  static String order(String reference) {
    LocalDate today = LocalDate.now(ZONE);
    return Documents.order(reference)
        .replace("2026-12-03T14:00:00+01:00", at(today.plusDays(7), 14))
        .replace("2026-12-01T06:00:00+01:00", at(today.plusDays(1), 6))
        .replace("\"quantity\":240,\"blanks\":252", "\"quantity\":40,\"blanks\":60");
  }

  private static String at(LocalDate day, int hour) {
    return day.atTime(hour, 0).atZone(ZONE).toOffsetDateTime() + "";
  }
}
