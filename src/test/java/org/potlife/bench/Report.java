package org.potlife.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes what was measured: to the console, and to files of one folder. */
final class Report {

  private final Path folder;

  Report(Path folder) {
    this.folder = folder;
  }

  void table(String name, Table table) {
    System.out.println(table.markdown());
    write(name + ".md", table.markdown());
    write(name + ".csv", table.csv());
  }

  void plot(String name, Plot plot) {
    write(name + ".svg", plot.svg());
  }

  /** A line to see that it goes on. */
  void say(String line) {
    System.out.println(line);
  }

  private void write(String name, String text) {
    try {
      Files.createDirectories(folder);
      Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
