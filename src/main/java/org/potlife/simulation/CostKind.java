package org.potlife.simulation;

/** What a plan costs besides lateness. */
public enum CostKind {
  INK_LOST("inkLost"),
  SET_UP("setUp"),
  OVERTIME("overtime"),
  EMPTY_BELT("emptyBelt"),
  CHANGE("change"),
  FINISH("finish"),
  THIN_SLACK("thinSlack"),
  LIGHT_BEFORE_DARK("lightBeforeDark");

  private final String word;

  CostKind(String word) {
    this.word = word;
  }

  /** The name in the API. */
  @Override
  public String toString() {
    return word;
  }
}
