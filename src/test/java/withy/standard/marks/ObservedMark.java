package withy.standard.marks;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.Recognition;
import withy.core.mark.Topmark;
import withy.core.mark.TopmarkShape;

/** A mark as charted, in the codes of the chart. */
record ObservedMark(CSVRecord cells) {
  private static final Map<String, Practice> PRACTICES =
      Map.of("FR", Practice.IALA_A, "US", Practice.USA);

  /** LITCHR with SIGGRP, the group of one left out. */
  private static final Map<String, String> RHYTHMS =
      Map.of(
          "2",
          "Fl",
          "3",
          "LFl",
          "4",
          "Q",
          "5",
          "VQ",
          "7",
          "Iso",
          "8",
          "Oc",
          "25",
          "Q(6)+LFl",
          "26",
          "VQ(6)+LFl");

  private static final Map<String, String> LIGHT_COLOURS =
      Map.of("1", "W", "3", "R", "4", "G", "6", "Y");

  static List<ObservedMark> all() {
    return Tables.of("observed_marks.csv").stream().map(ObservedMark::new).toList();
  }

  long row() {
    return cells.getRecordNumber();
  }

  Practice practice() {
    return PRACTICES.get(cells.get("country"));
  }

  boolean isBeacon() {
    return cells.get("shape_code(B=beacon)").startsWith("B");
  }

  boolean isLit() {
    return !cells.get("litchr").isEmpty();
  }

  /** The kind that the chart's class says; empty without a category. */
  Optional<MarkKind> kind() {
    String feature = cells.get("feature").toUpperCase(Locale.ROOT);
    String category = cells.get("category_code");
    if (feature.contains("ISOLATED")) {
      return Optional.of(MarkKind.ISOLATED_DANGER);
    }
    if (feature.contains("LAT")) {
      return category.isEmpty()
          ? Optional.empty()
          : Optional.of(Codes.kind("BOYLAT", "CATLAM=" + category));
    }
    if (feature.contains("CARDINAL")) {
      return Optional.of(Codes.kind("BOYCAR", "CATCAM=" + category));
    }
    return Optional.of(feature.contains("SAFEWATER") ? MarkKind.SAFE_WATER : MarkKind.SPECIAL);
  }

  /** Whether its look by day, and its light if it has one, are those of its one kind. */
  boolean isRecognised() {
    return kind().isPresent()
        && appearance().map(this::kindsByDay).equals(Optional.of(List.of(kind().orElseThrow())))
        && (!isLit() || light().map(this::isOfTheKind).orElse(false));
  }

  private List<MarkKind> kindsByDay(Appearance seen) {
    return Recognition.byDay(practice(), seen);
  }

  private boolean isOfTheKind(LightCharacter light) {
    return Recognition.byLight(practice(), light).contains(kind().orElseThrow());
  }

  /** As it looks by day; empty where no colour is coded. */
  Optional<Appearance> appearance() {
    if (cells.get("colour_codes").isEmpty()) {
      return Optional.empty();
    }
    List<Colour> colours = Codes.colours(cells.get("colour_codes"));
    ColourPattern pattern = Codes.pattern(cells.get("pattern_code"));
    TopmarkShape topmark = Codes.topmark(cells.get("topmark_code"));
    return Optional.of(
        new Appearance(
            Codes.body(cells.get("shape_code(B=beacon)")),
            pattern,
            colours,
            topmark == null ? null : Topmark.of(topmark, topmarkColour(topmark)),
            null));
  }

  /** The chart codes the topmark's shape alone. */
  private Colour topmarkColour(TopmarkShape topmark) {
    return switch (topmark) {
      case CAN, CONE_UP -> Codes.colours(cells.get("colour_codes")).get(0);
      case SPHERE -> Colour.RED;
      case X, UPRIGHT_CROSS -> Colour.YELLOW;
      default -> Colour.BLACK;
    };
  }

  /** Its light; empty with sectors of more than one colour. */
  Optional<LightCharacter> light() {
    String colour = LIGHT_COLOURS.get(cells.get("light_colour_codes"));
    if (colour == null) {
      return Optional.empty();
    }
    String rhythm = RHYTHMS.get(cells.get("litchr"));
    String group =
        cells.get("group").equals("(1)") || rhythm.contains("+") ? "" : cells.get("group");
    String period = cells.get("period").isEmpty() ? "" : " " + cells.get("period") + "s";
    return Optional.of(LightCharacter.parse(rhythm + group + " " + colour + period));
  }

  @Override
  public String toString() {
    return "row " + row() + ": " + String.join("|", cells.values());
  }
}
