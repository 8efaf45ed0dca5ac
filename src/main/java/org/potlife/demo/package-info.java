/**
 * The demo plant: a shop of our own invention with four days of orders, so that a newcomer sees a
 * plan within a minute of the start.
 *
 * <p>Four presses (one of them slow and by hand), two dryers with two presses each, two drying
 * cabinets, fourteen inks of four systems, frames of four meshes. The orders fill the presses to
 * about three quarters. Taken in order of their due dates several come late; a good plan has few.
 * Some are there to be talked about: one needs lots, one waits for its garments, one cannot be
 * kept, two cannot be placed.
 *
 * <p>Everything is in {@code demo/shop.json} and {@code demo/orders.json}, in the shape of the API;
 * only times of orders are written as working day and time of day, which {@link
 * org.potlife.demo.DemoPlant} turns into instants. All names are invented.
 */
package org.potlife.demo;
