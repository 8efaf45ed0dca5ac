package org.potlife.demo;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.potlife.order.Order;
import org.potlife.shop.Shop;

/** Reads the demo plant and moves its orders to the days at hand. */
public final class DemoPlant {

  /** The id under which the demo plant is kept. */
  public static final String ID = "demo";

  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .disable(DeserializationFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE)
          .build();

  private DemoPlant() {}

  /** The set-up of the demo plant; a new one with each call. */
  public static Shop shop() {
    return read("shop.json", new TypeReference<>() {});
  }

  /**
   * Orders for four working days. Day 1 of the file is the first working day from {@code firstDay}
   * on, day 0 the working day before it; Saturdays and Sundays are left out.
   *
   * @param firstDay the day after the one on which the plan is made, in the plant's time zone
   * @return the orders, times with the plant's offset, in the order of the file
   */
  public static List<Order> orders(LocalDate firstDay) {
    ZoneId zone = shop().timeZone();
    List<ObjectNode> written = read("orders.json", new TypeReference<>() {});
    return written.stream().map(order -> order(order, firstDay, zone)).toList();
  }

  private static Order order(ObjectNode order, LocalDate firstDay, ZoneId zone) {
    setInstant(order, "dueAt", firstDay, zone);
    setInstant((ObjectNode) order.get("garments"), "availableFrom", firstDay, zone);
    return JSON.convertValue(order, Order.class);
  }

  private static void setInstant(ObjectNode node, String field, LocalDate firstDay, ZoneId zone) {
    JsonNode written = node.get(field);
    LocalDate day = workingDay(firstDay, written.get("day").intValue());
    LocalTime time = LocalTime.parse(written.get("time").textValue());
    node.put(field, day.atTime(time).atZone(zone).toOffsetDateTime().toString());
  }

  private static LocalDate workingDay(LocalDate firstDay, int number) {
    LocalDate day = firstDay;
    while (isWeekend(day)) {
      day = day.plusDays(1);
    }
    int step = number < 1 ? -1 : 1;
    for (int i = 1; i != number; i += step) {
      do {
        day = day.plusDays(step);
      } while (isWeekend(day));
    }
    return day;
  }

  private static boolean isWeekend(LocalDate day) {
    return day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
  }

  private static <T> T read(String file, TypeReference<T> type) {
    try (InputStream in = DemoPlant.class.getResourceAsStream("/demo/" + file)) {
      return JSON.readValue(in, type);
    } catch (IOException e) {
      throw new UncheckedIOException("demo/" + file + " cannot be read", e);
    }
  }
}
