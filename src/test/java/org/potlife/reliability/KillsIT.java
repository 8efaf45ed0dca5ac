package org.potlife.reliability;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.potlife.reliability.Killed.Figures;

/** A short run of what {@code docs/reliability.md} reports of many kills. */
class KillsIT {

  @TempDir private Path folder;

  @Test
  void nothingAcknowledgedIsLostWhenTheServiceIsKilled() throws Exception {
    Figures figures = new ServiceKilled(folder, 7).run(3, Duration.ofMinutes(10));

    assertThat(figures.kills()).isEqualTo(3);
    assertThat(figures.publications()).isPositive();
  }

  @Test
  void nothingAcknowledgedIsLostWhenTheDatabaseIsKilled() throws Exception {
    Figures figures = new DatabaseKilled(folder, 7).run(2, Duration.ofMinutes(10));

    assertThat(figures.kills()).isEqualTo(2);
    assertThat(figures.publications()).isPositive();
  }
}
