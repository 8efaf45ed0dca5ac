package org.potlife.order;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;

/**
 * An order as the ERP pushes it.
 *
 * @param reference the ERP's own number
 * @param customer for people to read
 * @param priority 1 (most urgent) to 9, default 3
 * @param dueAt when the last garment must be off the belt; a past date is kept and shown as late
 * @param printsInListedOrder whether the prints must be made in the listed order, default false
 * @param garments what is printed on
 * @param prints what is printed
 */
public record Order(
    @NotBlank
        @Size(max = 60)
        @Pattern(
            regexp = "[A-Za-z0-9][A-Za-z0-9._~-]*",
            message = "must be letters, digits, dot, underscore, tilde or hyphen")
        String reference,
    @Size(max = 120) String customer,
    @Min(1) @Max(9) Integer priority,
    @NotNull OffsetDateTime dueAt,
    Boolean printsInListedOrder,
    @NotNull @Valid Garments garments,
    @NotEmpty @Size(max = 12) List<@NotNull @Valid Print> prints) {

  public Order {
    customer = customer == null ? "" : customer;
    priority = priority == null ? 3 : priority;
    printsInListedOrder = printsInListedOrder != null && printsInListedOrder;
    prints = prints == null ? null : Collections.unmodifiableList(prints);
  }

  /** The same order, due at another time. */
  public Order dueAt(OffsetDateTime other) {
    return new Order(reference, customer, priority, other, printsInListedOrder, garments, prints);
  }

  /** The same order on other garments, with the prints as they stand then. */
  public Order with(Garments others, List<Print> standing) {
    return new Order(reference, customer, priority, dueAt, printsInListedOrder, others, standing);
  }
}
