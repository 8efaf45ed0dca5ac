/**
 * Screens: the frames a plant owns, the room that makes them, and when an emulsion is dry.
 *
 * <p>An emulsion that is exposed wet breaks down on the press after a few impressions, so drying is
 * followed through the climate of the cabinet instead of by a fixed time: {@link
 * org.potlife.screen.VapourPressure} gives how thirsty the air is, {@link
 * org.potlife.screen.Drying} how that adds up to a dry coat (R5). The amount that a coat needs is
 * calibrated from one drying that the plant has observed.
 *
 * <p>{@link org.potlife.screen.ScreenRoom} describes sinks, benches, {@link
 * org.potlife.screen.Cabinet cabinets}, {@link org.potlife.screen.FrameStock frames} and {@link
 * org.potlife.screen.KeptStencil kept stencils}; {@link org.potlife.screen.StageMinutes} the work
 * at each stage. A cabinet is loaded as one batch and stays shut until all of it is dry, because a
 * wet screen wets its dry neighbours again (R6).
 */
package org.potlife.screen;
