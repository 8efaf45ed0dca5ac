package org.potlife;

/** A small shop and a small order as the API takes them, to be bent by tests with replace. */
public final class Documents {

  public static final String SHOP =
      """
      {"name":"Small shop","timeZone":"Europe/Berlin",
       "presses":[{"id":"P1","stations":6,"printWidthMm":400,"printHeightMm":500,
         "processes":["water-based","discharge"],"dryer":"D1","ratePerHour":400,
         "shifts":[{"days":["MONDAY","TUESDAY"],"from":"06:00","to":"14:00",
           "breaks":[{"from":"09:00","to":"09:15"}]}]}],
       "dryers":[{"id":"D1","heatedLengthMm":3000,"beltLengthMm":5000,"beltWidthMm":1200,
         "usableHeatKw":60}],
       "screenRoom":{"storeHumidityPercent":35,
         "cabinets":[{"id":"C1","frames":12,"climate":[
           {"from":"00:00","temperatureC":25,"humidityPercent":40}]}],
         "frames":[{"meshPerCm":43,"threadUm":80,"count":20}],
         "kept":[{"screen":"K1","design":"crest","ink":"brick","meshPerCm":43,"threadUm":80}],
         "shifts":[{"days":["MONDAY","TUESDAY"],"from":"06:00","to":"14:00"}]},
       "inkRoom":{"shifts":[{"days":["MONDAY","TUESDAY"],"from":"05:00","to":"13:00"}]},
       "inkSystems":[{"id":"dc","process":"discharge"},{"id":"wb","process":"water-based"}],
       "inks":[
         {"id":"brick","system":"dc","swatch":"#aa4433","lightness":40,"agentPercent":6,
          "recipe":[{"name":"base","role":"base","percent":88},
                    {"name":"red","role":"pigment","percent":9},
                    {"name":"slow","role":"retarder","percent":3}]},
         {"id":"sky","system":"wb","swatch":"#88bbee","lightness":70,
          "recipe":[{"name":"base","role":"base","percent":92},
                    {"name":"blue","role":"pigment","percent":8}]}]}
      """;

  public static final String ORDER =
      """
      {"reference":"HC-2041","customer":"Harbour Choir","priority":2,
       "dueAt":"2026-12-03T14:00:00+01:00",
       "garments":{"style":"heavy tee","colour":"navy","cottonPercent":100,"dye":"reactive",
         "quantity":240,"blanks":252,"availableFrom":"2026-12-01T06:00:00+01:00",
         "lengthMm":720,"widthMm":560,"massG":190},
       "prints":[{"design":"crest","position":"front","process":"discharge","trialPrint":"passed",
         "passes":1,"widthMm":300,"heightMm":380,"flashes":0,
         "colours":[{"ink":"brick","coveragePercent":22,"meshPerCm":43,"threadUm":80}]}]}
      """;

  private Documents() {}

  /** The order under another reference. */
  public static String order(String reference) {
    return ORDER.replace("HC-2041", reference);
  }

  /** A document with one passage replaced; the passage must be there. */
  public static String bent(String document, String passage, String replacement) {
    if (!document.contains(passage)) {
      throw new IllegalArgumentException("no " + passage + " in the document");
    }
    return document.replace(passage, replacement);
  }
}
