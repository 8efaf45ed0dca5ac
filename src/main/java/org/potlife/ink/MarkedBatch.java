package org.potlife.ink;

import java.time.OffsetDateTime;

/**
 * What the ink room has told of a batch of the plan.
 *
 * @param activatedAt when the agent was stirred in, from which its clock counts; null if it was not
 * @param gone whether it is emptied or discarded and serves nobody any more
 * @param leftG what should be in it, g
 */
public record MarkedBatch(String batch, OffsetDateTime activatedAt, boolean gone, int leftG) {}
