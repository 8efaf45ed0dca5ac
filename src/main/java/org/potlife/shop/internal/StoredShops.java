package org.potlife.shop.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.PlantChanged;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/** The set-ups in the table plant. */
@ApplicationScoped
class StoredShops implements Shops {

  private static final Pattern PLANT_ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._~-]{0,39}");

  private final EntityManager entities;
  private final ObjectMapper mapper;
  private final KeptRecipes recipes;
  private final Event<PlantChanged> changes;
  private final Clock clock;

  @Inject
  StoredShops(
      EntityManager entities,
      ObjectMapper mapper,
      KeptRecipes recipes,
      Event<PlantChanged> changes,
      Clock clock) {
    this.entities = entities;
    this.mapper = mapper;
    this.recipes = recipes;
    this.changes = changes;
    this.clock = clock;
  }

  @Override
  @Transactional
  public Optional<StoredShop> findShop(String plant) {
    return find(plant, LockModeType.NONE).map(this::stored);
  }

  @Override
  @Transactional
  public StoredShop getShop(String plant) {
    return findShop(plant).orElseThrow(StoredShops::unknownPlant);
  }

  @Override
  @Transactional
  public List<String> listPlants() {
    return entities
        .createQuery("select p.id from PlantEntity p order by p.id", String.class)
        .getResultList();
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public Optional<StoredShop> lockShop(String plant) {
    return find(plant, LockModeType.PESSIMISTIC_WRITE).map(this::stored);
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public void moveDataStamp(String plant) {
    PlantEntity entity =
        find(plant, LockModeType.PESSIMISTIC_WRITE).orElseThrow(StoredShops::unknownPlant);
    entity.dataStamp++;
    changes.fire(new PlantChanged(plant, clock.instant()));
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public Optional<StoredShop> createShop(String plant, Shop shop) {
    if (!PLANT_ID.matcher(plant).matches()) {
      throw ProblemException.badRequest(
          "A plant's id has 1 to 40 letters, digits, dots, underscores, tildes or hyphens and"
              + " begins with a letter or digit.");
    }
    // Not persist(): of two requests at a time the later one must learn of the earlier one.
    int rows =
        entities
            .createNativeQuery(
                "insert into plant (id, shop, version, data_stamp, changed_at)"
                    + " values (:id, cast(:shop as jsonb), 1, 1, :now) on conflict do nothing")
            .setParameter("id", plant)
            .setParameter("shop", write(shop))
            .setParameter("now", clock.instant())
            .executeUpdate();
    if (rows == 0) {
      return Optional.empty();
    }
    recipes.keep(plant, shop, clock.instant());
    return Optional.of(new StoredShop(plant, shop, 1, 1));
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public StoredShop changeShop(StoredShop present, Shop shop) {
    if (present.shop().equals(shop)) {
      return present;
    }
    PlantEntity entity =
        find(present.plant(), LockModeType.PESSIMISTIC_WRITE)
            .orElseThrow(StoredShops::unknownPlant);
    entity.shop = write(shop);
    entity.version++;
    entity.dataStamp++;
    entity.changedAt = clock.instant();
    recipes.keep(entity.id, shop, entity.changedAt);
    changes.fire(new PlantChanged(entity.id, entity.changedAt));
    return new StoredShop(entity.id, shop, entity.version, entity.dataStamp);
  }

  private Optional<PlantEntity> find(String plant, LockModeType lock) {
    return PLANT_ID.matcher(plant).matches()
        ? Optional.ofNullable(entities.find(PlantEntity.class, plant, lock))
        : Optional.empty();
  }

  private static ProblemException unknownPlant() {
    return ProblemException.notFound(
        "There is no such plant. Set it up first with PUT /api/v1/plants/{plant}/shop.");
  }

  private StoredShop stored(PlantEntity entity) {
    try {
      Shop shop = mapper.readValue(entity.shop, Shop.class);
      return new StoredShop(entity.id, shop, entity.version, entity.dataStamp);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("The stored set-up of " + entity.id + " is unreadable", e);
    }
  }

  private String write(Shop shop) {
    try {
      return mapper.writeValueAsString(shop);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
