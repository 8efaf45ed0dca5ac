package org.potlife.simulation;

/** Why a run has no place although some press takes it. */
public enum Refusal {
  /** Frames of a mesh, cabinet or drying do not allow its screens. */
  SCREENS,
  /** No span of the press within the horizon takes it. */
  HORIZON,
  /** A print of the same garments that must come first has no place. */
  EARLIER_PRINT
}
