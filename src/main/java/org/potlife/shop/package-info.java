/**
 * The plant's set-up: presses, dryers, rooms, inks, shifts and settings as one document.
 *
 * <p>{@link org.potlife.shop.Shops} is the way to it. {@link org.potlife.shop.ShopCheck} holds the
 * rules across fields that a set-up must meet before it is stored. Every change of a plant's set-up
 * or orders moves the plant's data stamp in the same transaction, so that a plan can tell whether
 * it is stale.
 */
package org.potlife.shop;
