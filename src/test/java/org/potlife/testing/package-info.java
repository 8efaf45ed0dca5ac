/**
 * Small shops and orders for tests, written as a planner would say them:
 *
 * <pre>{@code
 * Shop shop = SmallShop.shop()
 *     .press("P1", p -> p.stations(6).ratePerHour(360))
 *     .press("P2", p -> p.stations(10).shifts(daily("06:00-14:00", "10:00-10:30")))
 *     .ink("navy", i -> i.lightness(15))
 *     .build();
 * Order order = SmallOrder.order("A-1").quantity(240).due(1, "14:00")
 *     .print("crest", "front").discharge().colour("brick", 22).colour("navy")
 *     .print("number", "back").colour("white")
 *     .build();
 * }</pre>
 *
 * <p>What a test does not say has a plain default: one press P1, one dryer D1 that never holds it
 * back, one cabinet C1, frames in plenty, a discharge ink "brick" and a water-based ink "white",
 * staffed every day from 06:00 to 22:00 without breaks, in the time zone Europe/Vienna. Naming
 * something that is there changes it, a new name adds it. Days count from {@link
 * org.potlife.testing.SmallShop#DAY}, a Tuesday.
 */
package org.potlife.testing;
