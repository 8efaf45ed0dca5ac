/**
 * Reading JSON bodies so that the sender learns everything that is wrong at once.
 *
 * <p>A body becomes a tree ({@link org.potlife.platform.json.JsonText}), the tree is compared with
 * the record that it should become ({@link org.potlife.platform.json.JsonShape}), what does not fit
 * is reported and left out, the rest is bound, validated and cross-checked ({@link
 * org.potlife.platform.json.Bodies}). Binding in one go would stop at the first wrong value.
 */
package org.potlife.platform.json;
