package org.potlife.shop;

/**
 * A plant's set-up as stored.
 *
 * @param plant the plant's id
 * @param version counts the changes of the set-up, from 1
 * @param dataStamp counts the changes of set-up and orders
 */
public record StoredShop(String plant, Shop shop, long version, long dataStamp) {}
