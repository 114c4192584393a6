package withy.core.mark;

import withy.core.Term;

/** The rules of navigation marks, each with the clause that it is written in. */
public enum MarkRule implements Term {
  /** Region A: red port hand, green starboard hand; region B the other way round. */
  LATERAL_COLOUR_BY_REGION(Documents.catalogue("table 12.1")),
  /** With the conventional direction, port-hand marks are left to port. */
  LATERAL_SIDE_WITH_BUOYAGE(Documents.manual("14244", "ch. 9")),
  /** Against the conventional direction, every lateral mark is left on the other side. */
  SIDES_SWAP_AGAINST_BUOYAGE(Documents.manual("14244", "ch. 9")),
  /** Can to port, cone to starboard, in both regions. */
  SHAPE_KEEPS_ITS_SIDE(Documents.catalogue("table 12.1")),
  /** A lateral mark that carries a topmark carries the shape of its hand, in its own colour. */
  LATERAL_TOPMARK(Documents.catalogue("table 12.1")),
  /** A lateral light has the colour of its mark and any rhythm but (2+1). */
  LATERAL_LIGHT(Documents.manual("14067", "p. 5-32")),
  /** Lateral lights of the USA flash or occult regularly. */
  LATERAL_LIGHT_REGULAR(Documents.federal("62.45(d)(1)")),
  /** Red numbers are even and green ones odd in both regions; they grow with the buoyage. */
  RED_EVEN_GREEN_ODD(Documents.federal("62.43(a)")),
  /** Only the marks of one side of a channel are numbered. */
  ONLY_LATERAL_NUMBERED(Documents.federal("62.43(e)")),

  /** A preferred-channel mark has one broad band of the other hand's colour. */
  PREFERRED_CHANNEL_ONE_BAND(Documents.catalogue("table 12.1")),
  /** For the preferred channel the colour of the body, on top, decides. */
  PREFERRED_CHANNEL_BODY_COLOUR(Documents.federal("62.45(d)(2)")),
  /** For the secondary channel the mark is left on the opposite side. */
  SECONDARY_CHANNEL_OPPOSITE(Documents.system("section 2")),
  /** Topmark and shape follow the body colour. */
  PREFERRED_CHANNEL_TOPMARK(Documents.catalogue("table 12.1")),
  /** Fl(2+1) in red or green belongs to preferred-channel marks alone. */
  PREFERRED_CHANNEL_LIGHT(Documents.manual("14067", "p. 5-32")),

  /** The safe water lies on the side that the mark is named after. */
  CARDINAL_PASS_NAMED_SIDE(Documents.manual("14243", "p. 9-13")),
  /** The quadrants meet at the inter-cardinal true bearings from the mark. */
  CARDINAL_QUADRANTS(Documents.system("section 3")),
  /** On the safe side, the heading tells on which hand the mark lies. */
  CARDINAL_HAND_FROM_HEADING(Documents.system("section 3")),
  /** Black lies where the cones point. */
  CARDINAL_COLOURS(Documents.catalogue("table 12.1")),
  /** Two cones: up, base to base, down, point to point. */
  CARDINAL_TOPMARKS(Documents.catalogue("table 12.1")),
  /** White quick groups: continuous, 3, 6 with a long flash, 9. */
  CARDINAL_LIGHTS(Documents.manual("14243", "p. 9-13")),

  /** Black with red bands, two black spheres. */
  ISOLATED_DANGER_LOOK(Documents.catalogue("table 12.1")),
  /** The danger is under the mark; navigable water lies all round, at a distance. */
  ISOLATED_DANGER_WATER_ALL_ROUND(Documents.manual("14243", "p. 9-14")),
  /** White Fl(2). */
  ISOLATED_DANGER_LIGHT(Documents.manual("14243", "p. 9-14")),

  /** Red and white vertical stripes; a sphere, or one red sphere as topmark. */
  SAFE_WATER_LOOK(Documents.catalogue("table 12.1")),
  /** Navigable water lies all round. */
  SAFE_WATER_EITHER_SIDE(Documents.manual("14243", "p. 9-14")),
  /** Canada keeps the fairway buoy to port in both directions. */
  SAFE_WATER_KEPT_TO_PORT(
      Clause.read("Transport Canada, Aids to Navigation", "web page", "fairway buoys")),
  /** White isophase, occulting, one long flash every 10 s, or Morse A. */
  SAFE_WATER_LIGHT(Documents.manual("14243", "p. 9-14")),
  /** The USA shows white Morse A alone. */
  SAFE_WATER_LIGHT_MORSE_ONLY(Documents.federal("62.45(d)(3)")),
  /** Canada shows white Morse A or one long flash every 10 s. */
  SAFE_WATER_LIGHT_CANADA(
      Clause.remembered("Canadian Aids to Navigation System, TP 968", "2023", "fairway buoy")),

  /** Yellow; the topmark a yellow X. */
  SPECIAL_LOOK(Documents.catalogue("table 12.1")),
  /** A special mark tells no side: the chart says what it marks. */
  SPECIAL_NO_SIDE(Documents.federal("62.31")),
  /** Its shape must not be taken for that of a lateral or safe-water mark there. */
  SPECIAL_SHAPE_NOT_MISLEADING(Documents.manual("14160", "special marks")),
  /** Yellow, with any rhythm that is not one of the white marks'. */
  SPECIAL_LIGHT(Documents.catalogue("table 12.1")),

  /** Blue and yellow vertical stripes, yellow upright cross. */
  WRECK_LOOK(Documents.catalogue("12.4.1.1")),
  /** A new wreck: keep well clear. */
  WRECK_KEEP_CLEAR(
      Clause.read("IMO SN.1/Circ.259", "11 December 2006", "annex, IALA Recommendation O-133")),
  /** Blue and yellow by turns, 1.0 s each with 0.5 s dark between. */
  WRECK_LIGHT(
      Clause.read("IMO SN.1/Circ.259", "11 December 2006", "annex, IALA Recommendation O-133")),

  /** Two marks that stand one above the other: the boat is on the line of safe water. */
  LEADING_MARKS_IN_LINE(Documents.navigator("chapter 5, ranges")),
  /** Off the line the front mark, the lower one, stands on the side to which to steer. */
  LEADING_STEER_TO_FRONT_MARK(Documents.navigator("chapter 5, ranges")),
  /** With the marks astern it is the other way round. */
  LEADING_ASTERN_REVERSED(Documents.navigator("chapter 5, ranges")),
  /** The chart gives the bearing of a leading line in degrees true, from seaward. */
  LEADING_LINE_CHARTED(Clause.read("CHS Chart 1", "following IHO INT 1", "P20")),

  /** Quick or very quick groups, Fl(2), and the safe-water rhythms in white each mean one kind. */
  LIGHT_RESERVATIONS(Documents.system("sections 2 to 7")),
  /** The USA has no cardinal marks. */
  NO_CARDINAL_MARKS_IN_USA(Documents.federalFromMemory("62.25 to 62.33")),
  /** US lateral and special marks carry no topmark. */
  TOPMARKS_IN_USA(Documents.federalFromMemory("62.25 to 62.31")),
  /** A beacon means what the buoy of its class means. */
  BEACON_MEANS_WHAT_ITS_BUOY_MEANS(Documents.federal("62.23(b)")),
  /** Canada calls preferred-channel marks after the hand they are left on: bifurcation buoys. */
  CANADIAN_NAMES(Documents.canadian("bifurcation buoys")),

  /** The front mark seen left of the rear one: the boat is right of the line; astern reversed. */
  LEADING_LINE(Documents.navigator("chapter 5, ranges")),
  /** US dayboards: the shape and colour of the board tell the class. */
  DAYBOARDS(Clause.read("NOAA electronic navigational charts", "2019 to 2024", "DAYMAR objects")),
  /** Intracoastal Waterway: yellow triangle to starboard, square to port, whatever the colour. */
  WATERWAY_SYMBOL_DECIDES(Documents.federal("62.49(a)(1), (2) and (b)")),
  /** Intracoastal Waterway: a yellow band tells no side, so the colour does. */
  WATERWAY_BAND_TELLS_NO_SIDE(Documents.federal("62.49(a)(3)")),
  /** Western Rivers: one flash on the green side, two on the red, also in white. */
  RIVER_LIGHT_RHYTHM(Documents.federal("62.51(b)")),
  /** Brooms: twigs up to port, down to starboard, with the conventional direction. */
  BROOM_TELLS_THE_HAND(
      Clause.remembered("local practice of tidal flats", "no edition", "side of the brooms"));

  private final Clause clause;

  MarkRule(Clause clause) {
    this.clause = clause;
  }

  public Clause clause() {
    return clause;
  }

  /** The key of the rule's wording. */
  public String messageKey() {
    return "rule." + id();
  }
}
