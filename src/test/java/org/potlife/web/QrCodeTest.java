package org.potlife.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.zxing.ReaderException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QrCodeTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://localhost:8080/plants/demo/plans/demo-1/pages/batches/brick-1201-1",
        "https://plan.example/plants/h%C3%B6rn/plans/h%C3%B6rn-12/pages/batches/sea%20blue-1201-2"
      })
  void theCodeIsReadBackAsTheAddressThatWentIn(String address) throws ReaderException {
    QrCode code = QrCode.of(address);
    assertThat(QrReader.read(code.size(), code.path())).isEqualTo(address);
  }

  @Test
  void aCodeHasItsQuietZone() {
    QrCode code = QrCode.of("batch");
    // version 1 has 21 modules; four stay white on every side
    assertThat(code.size()).isEqualTo(21 + 2 * 4);
    assertThat(code.path()).startsWith("M4 4h7v1h-7z");
  }

  @Test
  void aTextThatNoCodeHoldsIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> QrCode.of("x".repeat(5000)));
  }
}
