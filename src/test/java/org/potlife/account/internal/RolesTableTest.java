package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.potlife.platform.access.Role;

/** The table of roles in docs/security.md, held against the doors that it names. */
class RolesTableTest {

  private static final Path PAGE = Path.of("docs", "security.md");
  private static final Pattern DOOR = Pattern.compile("`([A-Z]+) \u2026(/[^`]+)`");

  @Test
  void everyDoorThatTheTableNamesOpensForTheRolesThatItSays() throws IOException {
    Map<String, Door> doors =
        Door.all().stream()
            .collect(Collectors.toMap(Door::toString, Function.identity(), (one, other) -> one));
    List<String> lines = Files.readAllLines(PAGE);
    int head =
        lines.indexOf(lines.stream().filter(RolesTableTest::isHead).findFirst().orElseThrow());
    List<String> roles = cells(lines.get(head)).stream().map(cell -> cell.split(" ")[0]).toList();
    List<String> wrong = new ArrayList<>();
    int named = 0;
    for (String line : lines.subList(head + 2, lines.size())) {
      if (!line.startsWith("|")) {
        break;
      }
      for (MatchResult found : DOOR.matcher(line).results().toList()) {
        named++;
        String name = found.group(1) + " /api/v1/plants/{plant}" + found.group(2);
        Door door = doors.get(name);
        if (door == null) {
          wrong.add(name + " is no door");
        } else if (!opensFor(door, roles).equals(cells(line))) {
          wrong.add(name + " opens for " + door.roles());
        }
      }
    }

    assertThat(wrong).isEmpty();
    assertThat(named).isGreaterThan(10);
  }

  private static boolean isHead(String line) {
    return line.startsWith("| | viewer |");
  }

  /** What stands in a row behind its first cell. */
  private static List<String> cells(String line) {
    return Arrays.stream(line.split("\\|")).skip(2).map(String::strip).toList();
  }

  private static List<String> opensFor(Door door, List<String> roles) {
    return roles.stream()
        .map(role -> Role.withAllBroughtAlong(Set.of(role)))
        .map(all -> Collections.disjoint(all, door.roles()) ? "\u2013" : "yes")
        .toList();
  }
}
