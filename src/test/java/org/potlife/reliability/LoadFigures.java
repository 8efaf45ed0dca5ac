package org.potlife.reliability;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.potlife.testing.PackagedService;

/** How fast orders are acknowledged, with and without a search at full speed beside. */
final class LoadFigures {

  private static final String DEMO = "/api/v1/plants/demo";

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final PackagedService service;

  private LoadFigures(PackagedService service) {
    this.service = service;
  }

  /**
   * Orders from several clients for a while, each acknowledged before its client's next.
   *
   * @return milliseconds of each, in order of size
   */
  private List<Double> load(String name, int clients, int seconds) throws Exception {
    long until = System.nanoTime() + Duration.ofSeconds(seconds).toNanos();
    ExecutorService threads = Executors.newFixedThreadPool(clients);
    List<Future<List<Double>>> running = new ArrayList<>();
    for (int c = 0; c < clients; c++) {
      String prefix = name + "-" + c + "-";
      running.add(threads.submit(() -> one(prefix, until)));
    }
    List<Double> all = new ArrayList<>();
    for (Future<List<Double>> each : running) {
      all.addAll(each.get());
    }
    threads.shutdown();
    Collections.sort(all);
    System.out.printf(
        "%-9s %d clients, %d s: %.0f orders/s, p50 %.1f ms, p99 %.1f ms, longest %.0f ms%n",
        name,
        clients,
        seconds,
        all.size() / (double) seconds,
        at(all, 0.5),
        at(all, 0.99),
        all.get(all.size() - 1));
    return all;
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.get((int) Math.min(sorted.size() - 1L, Math.round(share * sorted.size())));
  }

  private List<Double> one(String prefix, long until) throws IOException, InterruptedException {
    List<Double> ms = new ArrayList<>();
    for (int i = 0; System.nanoTime() < until; i++) {
      String reference = prefix + i;
      HttpRequest request =
          HttpRequest.newBuilder(URI.create(service.address() + Yard.PATH + "/orders/" + reference))
              .header("Content-Type", "application/json")
              .PUT(BodyPublishers.ofString(Yard.order(reference)))
              .build();
      long begun = System.nanoTime();
      int status = client.send(request, BodyHandlers.ofString()).statusCode();
      ms.add((System.nanoTime() - begun) / 1e6);
      if (status != 201) {
        throw new IllegalStateException("answered " + status);
      }
    }
    return ms;
  }

  private String solve(int seconds) throws IOException, InterruptedException {
    return PackagedService.made(
        service.send(
            service
                .request(DEMO + "/plans")
                .POST(BodyPublishers.ofString("{\"solveSeconds\":" + seconds + "}"))));
  }

  /** Arguments: clients, seconds. */
  public static void main(String... args) throws Exception {
    int clients = Integer.parseInt(args[0]);
    int seconds = Integer.parseInt(args[1]);
    Path folder = Files.createTempDirectory("load");
    PackagedService service =
        new PackagedService(folder, Map.of("POTLIFE_DEMO", "true", "POTLIFE_CLOCK", "real"));
    service.start("service");
    try {
      Killed.ready(service);
      Yard.setUp(service);
      service.await(DEMO + "/plans/demo-1", a -> a.body().contains("\"finishedAt\""));
      LoadFigures figures = new LoadFigures(service);
      figures.load("warm-up", clients, seconds / 2);
      figures.load("quiet", clients, seconds);
      String plan = figures.solve(seconds + 15);
      service.await(plan, a -> a.body().contains("\"plannedAt\""));
      figures.load("solving", clients, seconds);
      System.out.println(
          "still "
              + service.await(plan, a -> true).replaceAll("(?s).*?\"state\":\"(\\w+)\".*", "$1")
              + " at the end of the load");
    } finally {
      service.end();
    }
    System.exit(0);
  }
}
