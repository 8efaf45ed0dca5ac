package org.potlife.order;

import com.fasterxml.jackson.annotation.JsonProperty;

/** State of the trial print that proves that the cloth discharges. */
public enum TrialPrint {
  @JsonProperty("not-needed")
  NOT_NEEDED,
  @JsonProperty("open")
  OPEN,
  @JsonProperty("passed")
  PASSED,
  @JsonProperty("failed")
  FAILED
}
