package org.potlife.web.office;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.order.Order;
import org.potlife.order.OrderQuery;
import org.potlife.order.OrderState;
import org.potlife.order.OrderTable;
import org.potlife.order.Orders;
import org.potlife.order.Promise;
import org.potlife.order.PromiseLookup;
import org.potlife.order.StoredOrder;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.list.PlanDrawing;
import org.potlife.plan.list.PlanIndex;
import org.potlife.platform.access.Roles;
import org.potlife.web.shell.Job;
import org.potlife.web.shell.Screens;
import org.potlife.web.shell.Shell;

/** Orders with their promises: the list, one of them, the table to take in. */
@Path("/plants/{plant}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class OrderScreen {

  /** Orders that a search looks through. */
  private static final int LOOKED_AT = 3000;

  private final Screens screens;
  private final Orders orders;
  private final PromiseLookup promises;
  private final Plans plans;

  @Inject
  OrderScreen(Screens screens, Orders orders, PromiseLookup promises, Plans plans) {
    this.screens = screens;
    this.orders = orders;
    this.promises = promises;
    this.plans = plans;
  }

  /**
   * The list.
   *
   * @param state a state, or {@code all}; without it what is left to be done
   * @param text looked for in reference, customer, garments and designs
   * @param late only what ends late or has no place
   */
  @GET
  @Path("orders")
  @Operation(hidden = true)
  public Response list(
      @PathParam("plant") String plant,
      @QueryParam("state") @DefaultValue("open") String state,
      @QueryParam("text") @DefaultValue("") String text,
      @QueryParam("late") boolean late,
      @QueryParam("from") @DefaultValue("0") int from) {
    return screens.show(
        plant,
        Job.ORDERS,
        shell ->
            OfficeScreens.orders(
                shell, desk(plant, state, text.strip(), late, from), shell.times(shell.today())));
  }

  @GET
  @Path("orders/{reference}")
  @Operation(hidden = true)
  public Response order(
      @PathParam("plant") String plant, @PathParam("reference") String reference) {
    return screens.show(
        plant,
        Job.ORDERS,
        shell -> {
          StoredOrder stored = orders.getOrder(plant, reference);
          OrderDesk.Row row =
              new OrderDesk.Row(stored, promises.findPromise(plant, reference).orElse(null));
          return OfficeScreens.order(
              shell, row, runs(shell, reference), shell.times(shell.today()));
        });
  }

  /** Where a table of orders is taken in. */
  @GET
  @Path("order-table")
  @Operation(hidden = true)
  public Response table(@PathParam("plant") String plant) {
    return screens.show(
        plant, Job.ORDERS, shell -> OfficeScreens.orderTable(shell, OrderTable.columns()));
  }

  private List<PlanDrawing.Run> runs(Shell shell, String reference) {
    Optional<PlanIndex> index = plans.findCurrent(shell.plant()).flatMap(StoredPlan::index);
    return index.stream()
        .flatMap(plan -> PlanDrawing.of(plan).runs().stream())
        .filter(run -> run.order().equals(reference))
        .toList();
  }

  private OrderDesk desk(String plant, String state, String text, boolean late, int asked) {
    List<StoredOrder> all = all(plant, state);
    Map<String, Promise> promised = promises.listPromises(plant);
    List<OrderDesk.Row> found =
        all.stream()
            .filter(stored -> text.isEmpty() || speaksOf(stored.order(), text))
            .map(stored -> new OrderDesk.Row(stored, promised.get(stored.order().reference())))
            .filter(row -> !late || row.troubled())
            .toList();
    int from = OrderDesk.begin(asked, found.size());
    return new OrderDesk(
        found.subList(from, Math.min(from + OrderDesk.PAGE, found.size())),
        found.size(),
        all.size() >= LOOKED_AT,
        from,
        state,
        text,
        late);
  }

  private List<StoredOrder> all(String plant, String word) {
    Optional<OrderState> state =
        Stream.of(OrderState.values()).filter(s -> s.word().equals(word)).findFirst();
    List<StoredOrder> all = new ArrayList<>();
    Optional<OrderQuery.After> after = Optional.empty();
    while (all.size() < LOOKED_AT) {
      List<StoredOrder> page =
          orders.listOrders(
              plant, new OrderQuery(state, Optional.empty(), after, OrderQuery.LARGEST_PAGE));
      all.addAll(page);
      if (page.size() < OrderQuery.LARGEST_PAGE) {
        break;
      }
      Order last = page.get(page.size() - 1).order();
      after = Optional.of(new OrderQuery.After(last.dueAt().toInstant(), last.reference()));
    }
    return all;
  }

  private static boolean speaksOf(Order order, String text) {
    String wanted = text.toLowerCase(Locale.ROOT);
    return Stream.concat(
            Stream.of(
                order.reference(),
                order.customer(),
                order.garments().style(),
                order.garments().colour()),
            order.prints().stream().map(print -> print.design()))
        .anyMatch(word -> word.toLowerCase(Locale.ROOT).contains(wanted));
  }
}
