package org.potlife.web;

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
    String page = base.resolve(head.pages() + "batches/" + Dress.address(batch)).toString();
    return new BatchLabel(batch, page, QrCode.of(page));
  }
}
