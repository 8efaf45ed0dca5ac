package org.potlife.planning;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the planner has decided himself and every further plan follows. An instruction only narrows
 * what a plan may do, so no rule of the shop can be broken by one. Runs and orders that there are
 * no more are passed over. What has begun or is frozen stays as it is.
 *
 * @param held orders that are held back: their runs are listed as unplaced
 * @param runs where and from when single runs are printed
 * @param lots orders that are split further than the shifts would ask for
 */
public record Instructions(
    @Size(max = 2000) List<@NotBlank @Size(max = 60) String> held,
    @Size(max = 2000) List<@NotNull @Valid RunWish> runs,
    @Size(max = 2000) List<@NotNull @Valid InLots> lots) {

  /** Nothing is decided. */
  public static final Instructions NONE = new Instructions(null, null, null);

  /** How a wait is explained that an instruction causes. */
  public static final String BEHIND = "the planner's instruction";

  /**
   * Where, from when and before which other one a run is printed.
   *
   * @param press the only press that may print it; null for any
   * @param notBefore its first piece comes no earlier; null for any time
   * @param before id of a run that {@code press} prints too, but after this one; null for any order
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record RunWish(
      @NotBlank @Size(max = 200) String run,
      @Size(max = 40) String press,
      OffsetDateTime notBefore,
      @Size(max = 200) String before) {

    /** In any order. */
    public RunWish(String run, String press, OffsetDateTime notBefore) {
      this(run, press, notBefore, null);
    }
  }

  /**
   * An order is printed in at least so many lots.
   *
   * @param lots 2 to 20
   */
  public record InLots(
      @NotBlank @Size(max = 60) String order, @NotNull @Min(2) @Max(20) Integer lots) {}

  public Instructions {
    held = own(held);
    runs = own(runs);
    lots = own(lots);
  }

  /** A list of our own; what is missing in it is reported by the checks. */
  private static <T> List<T> own(List<T> list) {
    return list == null ? List.of() : Collections.unmodifiableList(new ArrayList<>(list));
  }

  /** Whether an order is held back. */
  public boolean holds(String order) {
    return held.contains(order);
  }

  /** What was decided of a run, if anything was. */
  public Optional<RunWish> findRun(String run) {
    return runs.stream().filter(wish -> wish.run().equals(run)).reduce((first, last) -> last);
  }

  /**
   * The only press that may print a run, where the planner names one for it or for a run that comes
   * before it.
   */
  public Optional<String> findPress(String run) {
    return findRun(run)
        .map(RunWish::press)
        .or(
            () ->
                runs.stream()
                    .filter(wish -> run.equals(wish.before()))
                    .map(RunWish::press)
                    .filter(Objects::nonNull)
                    .findFirst());
  }

  /** Whether the planner wants a run before another one. */
  public boolean putsBefore(String run, String other) {
    return findRun(run).filter(wish -> other.equals(wish.before())).isPresent();
  }

  /** Least number of lots of an order, 1 when nothing was decided. */
  public int leastLots(String order) {
    return lots.stream()
        .filter(wish -> wish.order().equals(order))
        .mapToInt(InLots::lots)
        .max()
        .orElse(1);
  }
}
