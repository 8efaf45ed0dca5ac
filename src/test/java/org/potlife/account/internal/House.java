package org.potlife.account.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.Set;
import java.util.UUID;
import org.potlife.Documents;
import org.potlife.platform.json.JsonSettings;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** A house with people, made behind the service's back, and emptied after each test. */
@ApplicationScoped
class House {

  static final String PASSWORD = "wet screens dry slowly";

  @Inject Accounts accounts;
  @Inject Tokens tokens;
  @Inject Shops shops;
  @Inject EntityManager entities;

  @Transactional
  String plant() throws Exception {
    String plant = "h" + UUID.randomUUID().toString().substring(0, 8);
    Shop shop = JsonSettings.newMapper().readValue(Documents.SHOP, Shop.class);
    shops.createShop(plant, shop);
    return plant;
  }

  long account(String name, Set<String> roles) {
    return accounts.create(name, "Full " + name, roles, PASSWORD, false).orElseThrow().id();
  }

  String token(String plant, Set<String> roles) {
    String name = UUID.randomUUID().toString();
    return tokens.create(plant, name, roles, "test").orElseThrow().secret();
  }

  long number(String sql) {
    return ((Number) entities.createNativeQuery(sql).getSingleResult()).longValue();
  }

  @Transactional
  void empty() {
    for (String table :
        new String[] {"account", "access_token", "sign_in_failure", "set_up_link", "trail_entry"}) {
      entities.createNativeQuery("delete from " + table).executeUpdate();
    }
  }
}
