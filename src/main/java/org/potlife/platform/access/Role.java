package org.potlife.platform.access;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** A role with what it brings along. */
public enum Role {
  PLANNER(
      Roles.PLANNER,
      "Planner",
      "orders, set-up, plans, and all that the rooms may",
      Roles.PRESS,
      Roles.INK_ROOM,
      Roles.SCREEN_ROOM,
      Roles.VIEWER),
  INK_ROOM(Roles.INK_ROOM, "Ink room", "batches and ink on the shelf", Roles.VIEWER),
  SCREEN_ROOM(Roles.SCREEN_ROOM, "Screen room", "climate, emulsion and screens", Roles.VIEWER),
  PRESS(Roles.PRESS, "Press", "runs, presses, dryers and trial prints", Roles.VIEWER),
  VIEWER(Roles.VIEWER, "Viewer", "reads all lists and pages"),
  ADMINISTRATOR(Roles.ADMINISTRATOR, "Administrator", "accounts and tokens", Roles.VIEWER),
  ERP(Roles.ERP, "ERP", "sends orders and receipts of garments, reads what became of them"),
  METRICS(Roles.METRICS, "Metrics", "reads the figures of operation under /q/metrics");

  private final String word;
  private final String title;
  private final String meaning;
  private final Set<String> bringsAlong;

  Role(String word, String title, String meaning, String... bringsAlong) {
    this.word = word;
    this.title = title;
    this.meaning = meaning;
    this.bringsAlong = Set.of(bringsAlong);
  }

  /** The name of the role, one of {@link Roles}. */
  public String word() {
    return word;
  }

  public String title() {
    return title;
  }

  /** What it is for, in a few words. */
  public String meaning() {
    return meaning;
  }

  /** The roles that a person can have. */
  public static List<Role> ofPeople() {
    return List.of(PLANNER, INK_ROOM, SCREEN_ROOM, PRESS, VIEWER, ADMINISTRATOR);
  }

  /** The roles that a token can have: nobody plans or makes accounts by token. */
  public static List<Role> ofTokens() {
    return List.of(ERP, INK_ROOM, SCREEN_ROOM, PRESS, VIEWER, METRICS);
  }

  public static Optional<Role> find(String word) {
    return Arrays.stream(values()).filter(role -> role.word.equals(word)).findFirst();
  }

  /** The given roles with those that they bring along; words that are no role stay as they are. */
  public static Set<String> withAllBroughtAlong(Collection<String> words) {
    Set<String> all = new TreeSet<>(words);
    for (String word : words) {
      find(word).ifPresent(role -> all.addAll(role.bringsAlong));
    }
    return all;
  }
}
