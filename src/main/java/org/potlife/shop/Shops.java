package org.potlife.shop;

import java.util.List;
import java.util.Optional;
import org.potlife.platform.problem.ProblemException;

/** The plants' set-ups. */
public interface Shops {

  /** The plant's set-up, if there is such a plant. */
  Optional<StoredShop> findShop(String plant);

  /**
   * The plant's set-up.
   *
   * @throws ProblemException 404 when there is no such plant
   */
  StoredShop getShop(String plant);

  /** The ids of all plants, in order. */
  List<String> listPlants();

  /**
   * The plant's set-up, held for the current transaction: whoever else wants to change the plant's
   * set-up or orders waits. Needs a transaction.
   */
  Optional<StoredShop> lockShop(String plant);

  /** Moves the plant's data stamp: every plan made so far is stale. Needs the lock. */
  void moveDataStamp(String plant);

  /**
   * Stores a new plant's set-up.
   *
   * @return empty when another request made the plant in the meantime
   * @throws ProblemException 400 when the id is not one
   */
  Optional<StoredShop> createShop(String plant, Shop shop);

  /** Stores a changed set-up and moves the data stamp; the same set-up again changes nothing. */
  StoredShop changeShop(StoredShop present, Shop shop);
}
