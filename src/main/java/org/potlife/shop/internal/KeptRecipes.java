package org.potlife.shop.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.potlife.ink.Component;
import org.potlife.ink.Ink;
import org.potlife.ink.RecipeVersion;
import org.potlife.shop.Recipes;
import org.potlife.shop.Shop;

/** The recipes in the table ink_recipe. */
@ApplicationScoped
class KeptRecipes implements Recipes {

  private final EntityManager entities;
  private final ObjectMapper mapper;

  @Inject
  KeptRecipes(EntityManager entities, ObjectMapper mapper) {
    this.entities = entities;
    this.mapper = mapper;
  }

  @Override
  @Transactional
  public List<RecipeVersion> list(String plant, String ink) {
    return entities
        .createQuery(
            "select r from RecipeEntity r where r.plant = :plant and r.ink = :ink"
                + " order by r.version desc",
            RecipeEntity.class)
        .setParameter("plant", plant)
        .setParameter("ink", ink)
        .getResultStream()
        .map(this::version)
        .toList();
  }

  @Override
  @Transactional
  public Map<String, Integer> inForce(String plant) {
    Map<String, Integer> versions = new LinkedHashMap<>();
    newest(plant).forEach((ink, row) -> versions.put(ink, row.version));
    return versions;
  }

  /** Keeps the recipes of a set-up that are not those in force. Within the change of the set-up. */
  @Transactional(Transactional.TxType.MANDATORY)
  void keep(String plant, Shop shop, Instant now) {
    Map<String, RecipeEntity> newest = newest(plant);
    for (Ink ink : shop.inks()) {
      RecipeEntity before = newest.get(ink.id());
      if (before == null || !version(before).isOf(ink)) {
        RecipeEntity row = new RecipeEntity();
        row.plant = plant;
        row.ink = ink.id();
        row.version = before == null ? 1 : before.version + 1;
        row.agentPercent = ink.agentPercent();
        row.recipe = write(ink.recipe());
        row.since = now;
        entities.persist(row);
      }
    }
  }

  private Map<String, RecipeEntity> newest(String plant) {
    Map<String, RecipeEntity> newest = new LinkedHashMap<>();
    entities
        .createQuery(
            "select r from RecipeEntity r where r.plant = :plant order by r.ink, r.version",
            RecipeEntity.class)
        .setParameter("plant", plant)
        .getResultList()
        .forEach(row -> newest.put(row.ink, row));
    return newest;
  }

  private RecipeVersion version(RecipeEntity row) {
    try {
      List<Component> recipe = mapper.readValue(row.recipe, new TypeReference<>() {});
      return new RecipeVersion(row.ink, row.version, row.since, row.agentPercent, recipe);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Recipe " + row.id + " is unreadable", e);
    }
  }

  private String write(List<Component> recipe) {
    try {
      return mapper.writeValueAsString(recipe);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
