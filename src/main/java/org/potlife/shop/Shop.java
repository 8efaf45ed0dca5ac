package org.potlife.shop;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.potlife.dryer.Dryer;
import org.potlife.ink.Ink;
import org.potlife.ink.InkRoom;
import org.potlife.ink.InkSystem;
import org.potlife.screen.ScreenRoom;

/**
 * The set-up of one plant as one document.
 *
 * @param name what people call the plant
 * @param timeZone zone id of the tz database; all shifts are in it
 * @param currency ISO 4217 code of all costs, default EUR
 */
public record Shop(
    @NotBlank @Size(max = 80) String name,
    @NotNull ZoneId timeZone,
    @Size(min = 3, max = 3) String currency,
    @NotEmpty @Size(max = 100) List<@NotNull @Valid Press> presses,
    @NotEmpty @Size(max = 50) List<@NotNull @Valid Dryer> dryers,
    @NotNull @Valid ScreenRoom screenRoom,
    @NotNull @Valid InkRoom inkRoom,
    @NotEmpty @Size(max = 50) List<@NotNull @Valid InkSystem> inkSystems,
    @NotEmpty @Size(max = 2000) List<@NotNull @Valid Ink> inks,
    @NotNull @Valid ClothRules cloth,
    @NotNull @Valid PlanSettings settings) {

  public Shop {
    currency = currency == null ? "EUR" : currency;
    presses = presses == null ? null : Collections.unmodifiableList(presses);
    dryers = dryers == null ? null : Collections.unmodifiableList(dryers);
    inkSystems = inkSystems == null ? null : Collections.unmodifiableList(inkSystems);
    inks = inks == null ? null : Collections.unmodifiableList(inks);
    cloth = cloth == null ? new ClothRules(null, null, null, null, null) : cloth;
    settings = settings == null ? PlanSettings.defaults() : settings;
  }

  /** The same set-up with another screen room. */
  public Shop withScreenRoom(ScreenRoom room) {
    return new Shop(
        name,
        timeZone,
        currency,
        presses,
        dryers,
        room,
        inkRoom,
        inkSystems,
        inks,
        cloth,
        settings);
  }

  /** The same set-up with other presses. */
  public Shop withPresses(List<Press> others) {
    return new Shop(
        name,
        timeZone,
        currency,
        others,
        dryers,
        screenRoom,
        inkRoom,
        inkSystems,
        inks,
        cloth,
        settings);
  }

  /** The ink with this id, if the plant has it. */
  public Optional<Ink> findInk(String id) {
    return inks.stream().filter(ink -> ink.id().equals(id)).findFirst();
  }

  /** The ink system with this id, if the plant has it. */
  public Optional<InkSystem> findInkSystem(String id) {
    return inkSystems.stream().filter(system -> system.id().equals(id)).findFirst();
  }

  /** The dryer with this id, if the plant has it. */
  public Optional<Dryer> findDryer(String id) {
    return dryers.stream().filter(dryer -> dryer.id().equals(id)).findFirst();
  }

  /** The press with this id, if the plant has it. */
  public Optional<Press> findPress(String id) {
    return presses.stream().filter(press -> press.id().equals(id)).findFirst();
  }
}
