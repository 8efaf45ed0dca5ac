package org.potlife.event.internal;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.potlife.event.EventApplied;
import org.potlife.event.EventEffect;
import org.potlife.event.EventEffect.Verdict;
import org.potlife.event.EventReporters;
import org.potlife.event.ShopEvent;
import org.potlife.platform.access.Caller;
import org.potlife.platform.json.Bodies;
import org.potlife.platform.problem.FieldError;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shops;

/** Takes in what is told: all events of a request with their effects, or none. */
@ApplicationScoped
class EventIntake {

  /** More in one request are no longer what just happened. */
  private static final int MOST = 1000;

  private static final Logger LOG = Logger.getLogger(EventIntake.class);

  private final Map<String, EventEffect<?>> effects;
  private final Shops shops;
  private final Bodies bodies;
  private final Event<EventApplied> applied;
  private final Caller caller;
  private final Clock clock;

  @Inject
  EventIntake(
      @Any Instance<EventEffect<?>> effects,
      Shops shops,
      Bodies bodies,
      Event<EventApplied> applied,
      Caller caller,
      Clock clock) {
    this.effects =
        effects.stream().collect(Collectors.toMap(EventEffect::type, Function.identity()));
    this.shops = shops;
    this.bodies = bodies;
    this.applied = applied;
    this.caller = caller;
    this.clock = clock;
  }

  /** What became of one event. */
  enum Outcome {
    APPLIED,
    KNOWN,
    PARKED
  }

  /** One event that was taken in; the cause only when it is parked. */
  record Taken(String source, String id, Outcome outcome, String cause) {}

  private record Told<D extends Record>(ShopEvent event, D data, EventEffect<D> effect) {}

  /**
   * Takes in one CloudEvent or an array of them, in their order.
   *
   * @throws ProblemException 404 without such a plant, 422 with every offending field, 403 when the
   *     caller may not tell one of them
   */
  @Transactional
  List<Taken> take(String plant, byte[] body) {
    shops.lockShop(plant).orElseThrow(() -> ProblemException.notFound("There is no such plant."));
    Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
    List<Told<?>> told = read(plant, bodies.readTree(body), now);
    demandRoles(told);
    List<Taken> taken = new ArrayList<>();
    boolean movesPlan = false;
    for (Told<?> each : told) {
      if (ShopEventEntity.isKnown(plant, each.event().source(), each.event().id())) {
        taken.add(new Taken(each.event().source(), each.event().id(), Outcome.KNOWN, null));
      } else {
        Verdict verdict = apply(each, now);
        movesPlan |= verdict.movesPlan();
        taken.add(
            new Taken(
                each.event().source(),
                each.event().id(),
                verdict.contradiction() == null ? Outcome.APPLIED : Outcome.PARKED,
                verdict.contradiction()));
      }
    }
    if (movesPlan) {
      shops.moveDataStamp(plant);
    }
    return taken;
  }

  private void demandRoles(List<Told<?>> told) {
    List<FieldError> errors = new ArrayList<>();
    for (int i = 0; i < told.size(); i++) {
      String type = told.get(i).event().type();
      Set<String> roles = EventReporters.of(type);
      if (!caller.mayAs(roles)) {
        String pointer = told.size() == 1 ? "/type" : "/" + i + "/type";
        errors.add(
            new FieldError(pointer, type + " is told by one of " + String.join(", ", roles)));
      }
    }
    if (!errors.isEmpty()) {
      throw ProblemException.forbidden(
          "Not all of this may be told by this caller; nothing is recorded.", errors);
    }
  }

  private <D extends Record> Verdict apply(Told<D> told, Instant now) {
    Verdict verdict = told.effect().apply(told.event(), told.data());
    ShopEventEntity.record(told.event(), verdict.contradiction(), now);
    if (verdict.contradiction() == null) {
      applied.fire(new EventApplied(told.event()));
    } else {
      LOG.infof(
          "Event %s of %s is parked: %s",
          told.event().id(), told.event().type(), verdict.contradiction());
    }
    return verdict;
  }

  /**
   * Lets an event that was parked take effect now, at its own time. The caller holds the plant's
   * lock and keeps the verdict.
   */
  Verdict applyAgain(ShopEvent event) {
    EventEffect<?> effect = effects.get(event.type());
    return effect == null
        ? Verdict.parked("Events of type " + event.type() + " have no effect here any more.")
        : applyAgain(event, effect);
  }

  private <D extends Record> Verdict applyAgain(ShopEvent event, EventEffect<D> effect) {
    List<FieldError> errors = new ArrayList<>();
    D data = bodies.readPart(event.data(), effect.data(), errors);
    if (errors.isEmpty()) {
      errors.addAll(effect.check(event, data));
    }
    if (!errors.isEmpty()) {
      return Verdict.parked(
          "Its data are no longer taken: "
              + errors.get(0).pointer()
              + " "
              + errors.get(0).detail()
              + ".");
    }
    Verdict verdict = effect.apply(event, data);
    if (verdict.contradiction() == null) {
      applied.fire(new EventApplied(event));
    }
    return verdict;
  }

  private List<Told<?>> read(String plant, JsonNode tree, Instant now) {
    List<FieldError> errors = new ArrayList<>();
    List<Told<?>> told = new ArrayList<>();
    if (tree.isArray()) {
      if (tree.size() > MOST) {
        throw ProblemException.invalid(
            List.of(new FieldError("", "must have " + MOST + " events at most; send several")));
      }
      for (int i = 0; i < tree.size(); i++) {
        List<FieldError> own = new ArrayList<>();
        told.add(one(plant, tree.get(i), now, own));
        String parent = "/" + i;
        own.forEach(error -> errors.add(error.under(parent)));
      }
    } else {
      told.add(one(plant, tree, now, errors));
    }
    if (!errors.isEmpty()) {
      throw ProblemException.invalid(errors);
    }
    return told;
  }

  private Told<?> one(String plant, JsonNode tree, Instant now, List<FieldError> errors) {
    EventEnvelope envelope = EventEnvelope.read(tree, effects.keySet(), now, errors);
    return envelope == null
        ? null
        : bind(plant, envelope, effects.get(envelope.type()), now, errors);
  }

  private <D extends Record> Told<D> bind(
      String plant,
      EventEnvelope envelope,
      EventEffect<D> effect,
      Instant now,
      List<FieldError> errors) {
    List<FieldError> own = new ArrayList<>();
    D data = bodies.readPart(envelope.data(), effect.data(), own);
    ShopEvent event =
        new ShopEvent(
            plant,
            envelope.source(),
            envelope.id(),
            envelope.type(),
            // a device whose clock goes ahead tells of what has happened, not of what is to come
            earlier(envelope.time().truncatedTo(ChronoUnit.MICROS), now),
            envelope.data());
    if (own.isEmpty()) {
      own.addAll(effect.check(event, data));
    }
    own.forEach(error -> errors.add(error.under("/data")));
    return own.isEmpty() ? new Told<>(event, data, effect) : null;
  }

  private static Instant earlier(Instant one, Instant other) {
    return one.isBefore(other) ? one : other;
  }
}
