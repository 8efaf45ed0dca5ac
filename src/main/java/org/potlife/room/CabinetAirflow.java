package org.potlife.room;

/**
 * What the looks at the loads of a cabinet have made of its airflow factor.
 *
 * @param cabinet id of the cabinet
 * @param factor the factor to plan with
 * @param observations loads that it was learned from
 */
public record CabinetAirflow(String cabinet, double factor, int observations) {}
