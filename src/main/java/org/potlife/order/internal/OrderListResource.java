package org.potlife.order.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.order.OrderQuery;
import org.potlife.order.OrderState;
import org.potlife.order.Orders;
import org.potlife.order.PromiseLookup;
import org.potlife.order.StoredOrder;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.Years;
import org.potlife.shop.Shops;

/** The orders of a plant, page by page. */
@Path("/api/v1/plants/{plant}/orders")
@Tag(name = "orders")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({Roles.VIEWER, Roles.ERP})
public class OrderListResource {

  private static final int PAGE = 100;

  private final Shops shops;
  private final Orders orders;
  private final PromiseLookup promises;

  @Inject
  OrderListResource(Shops shops, Orders orders, PromiseLookup promises) {
    this.shops = shops;
    this.orders = orders;
    this.promises = promises;
  }

  /**
   * One page.
   *
   * @param next cursor of the next page; left out on the last one
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record OrderPage(List<OrderView> orders, String next) {}

  @GET
  @Operation(
      summary = "Orders by due date",
      description =
          "state: open, started, finished or cancelled; dueBefore: a date and time with an offset;"
              + " limit: 1 to 500, default 100; cursor: next of the page before.")
  public OrderPage list(
      @PathParam("plant") String plant,
      @QueryParam("state") String state,
      @QueryParam("dueBefore") String dueBefore,
      @QueryParam("cursor") String cursor,
      @QueryParam("limit") String limit) {
    shops.getShop(plant);
    int size = given(limit).map(OrderListResource::size).orElse(PAGE);
    List<StoredOrder> page =
        orders.listOrders(
            plant,
            new OrderQuery(
                given(state).map(OrderListResource::state),
                given(dueBefore).map(OrderListResource::instant),
                given(cursor).map(OrderCursor::read),
                size));
    String next = page.size() == size ? OrderCursor.after(page.get(size - 1)) : null;
    return new OrderPage(page.stream().map(order -> view(plant, order)).toList(), next);
  }

  private OrderView view(String plant, StoredOrder stored) {
    return OrderView.of(
        stored, promises.findPromise(plant, stored.order().reference()).orElse(null));
  }

  private static Optional<String> given(String value) {
    return Optional.ofNullable(value).filter(text -> !text.isBlank());
  }

  private static OrderState state(String word) {
    return Stream.of(OrderState.values())
        .filter(state -> state.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                ProblemException.badRequest("state must be open, started, finished or cancelled."));
  }

  private static Instant instant(String text) {
    return Years.moment("dueBefore", text);
  }

  private static int size(String text) {
    try {
      int size = Integer.parseInt(text);
      if (size >= 1 && size <= OrderQuery.LARGEST_PAGE) {
        return size;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw ProblemException.badRequest("limit must be a whole number from 1 to 500.");
  }
}
