package org.potlife.plan.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import org.potlife.planning.Instructions;
import org.potlife.shop.Shops;

/** The planners' instructions, one document per plant. */
@ApplicationScoped
class InstructionBook {

  private final EntityManager entities;
  private final ObjectMapper mapper;
  private final Shops shops;
  private final Clock clock;

  @Inject
  InstructionBook(EntityManager entities, ObjectMapper mapper, Shops shops, Clock clock) {
    this.entities = entities;
    this.mapper = mapper;
    this.shops = shops;
    this.clock = clock;
  }

  /**
   * The document as stored.
   *
   * @param version counts its changes; 0 before the first
   */
  record Stored(Instructions instructions, long version) {}

  /** What was decided for a plant. */
  Stored get(String plant) {
    InstructionEntity found = entities.find(InstructionEntity.class, plant);
    return found == null
        ? new Stored(Instructions.NONE, 0)
        : new Stored(read(found.document), found.version);
  }

  /** Stores other instructions and makes plans made before stale. Needs the plant's lock. */
  Stored put(String plant, Instructions instructions) {
    Stored before = get(plant);
    if (before.instructions().equals(instructions)) {
      return before;
    }
    InstructionEntity entity = entities.find(InstructionEntity.class, plant);
    boolean fresh = entity == null;
    if (fresh) {
      entity = new InstructionEntity();
      entity.plant = plant;
    }
    entity.version = before.version() + 1;
    entity.document = write(instructions);
    entity.changedAt = clock.instant();
    if (fresh) {
      entities.persist(entity);
    }
    shops.moveDataStamp(plant);
    return new Stored(instructions, entity.version);
  }

  private String write(Instructions instructions) {
    try {
      return mapper.writeValueAsString(instructions);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private Instructions read(String document) {
    try {
      return mapper.readValue(document, Instructions.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Stored instructions are unreadable", e);
    }
  }
}
