package org.potlife.web;

import jakarta.ws.rs.core.UriBuilder;
import java.net.URI;
import org.potlife.plan.list.ActivationList.Batch;

/**
 * The label of a bucket.
 *
 * @param page address of the batch's page, which the code leads to
 */
public record BatchLabel(Batch batch, String page, QrCode code) {

  /**
   * @param base address under which the service is reached, as the browser asked for it
   */
  static BatchLabel of(Batch batch, PageHead head, URI base) {
    String page =
        UriBuilder.fromUri(base)
            .segment("plants", head.plant(), "plans", head.plan(), "pages", "batches", batch.id())
            .build()
            .toString();
    return new BatchLabel(batch, page, QrCode.of(page));
  }
}
