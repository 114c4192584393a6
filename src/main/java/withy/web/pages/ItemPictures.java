package withy.web.pages;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.item.Assembly;
import withy.core.item.Feature;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.Option;
import withy.core.item.Part;
import withy.core.light.LightCharacter;
import withy.core.light.LightTimeline;
import withy.core.mark.Appearance;
import withy.core.mark.MarkLook;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.Lookout;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.View;
import withy.drawing.ItemPicture;
import withy.drawing.Lettering;
import withy.drawing.LightStrip;
import withy.drawing.MarkDrawing;
import withy.drawing.PartDrawing;
import withy.drawing.Svg;
import withy.wording.Wording;

/** The pictures of items, each with a name that tells what kind of picture it is and no more. */
public final class ItemPictures {
  private static final Set<Form> CHARTS =
      EnumSet.of(Form.CLEARANCE, Form.CHART_OVER_RULE, Form.PASSAGE);

  private final Wording wording;

  public ItemPictures(Wording wording) {
    this.wording = wording;
  }

  /**
   * What a learner sees when asked: the view and, where it adds something, the plan; nothing where
   * a mark is to be put together, or the pictures are the options.
   */
  public List<Svg> asked(Item item) {
    if (item.answer() instanceof Assembly || asks(item, LightQuestion.RHYTHM)) {
      return List.of();
    }
    ItemPicture drawn = ItemPicture.question(item);
    List<Svg> pictures = new ArrayList<>();
    pictures.add(drawn.view().named(name(item)));
    if (drawn.plan() != null) {
      pictures.add(drawn.plan().named(wording.text("page.picture.plan")));
    }
    return pictures;
  }

  /** One picture to stand beside words that say what it is: a mark alone, as large as it goes. */
  public Svg small(Item item) {
    if (asks(item, LightQuestion.RHYTHM)) {
      return ItemPicture.answered(item, null).view();
    }
    if (item.answer() instanceof Assembly assembly) {
      return assembly
          .appearance(assembly.key())
          .map(each -> MarkDrawing.near(each, null))
          .orElseGet(() -> ItemPicture.question(item).view());
    }
    View view = item.scenario().situation().view();
    if (isChart(item)) {
      return ItemPicture.question(item).view();
    }
    boolean alone = item.form() != Form.NUMBER && item.form() != Form.LEADING;
    if (!alone || item.scenario().marks().isEmpty() || view == View.LIGHT) {
      return ItemPicture.question(item).view();
    }
    Appearance mark = item.scenario().mark().appearance();
    return view == View.NEAR ? MarkDrawing.near(mark, null) : MarkDrawing.distant(mark);
  }

  /** A part of a mark to be put together; empty where words say more than a picture. */
  public Optional<Svg> part(Feature feature, Part part) {
    return Optional.ofNullable(part.look())
        .flatMap(
            look ->
                switch (feature) {
                  case BODY -> Optional.of(PartDrawing.body(look));
                  case COLOURS -> Optional.of(PartDrawing.colours(look));
                  case TOPMARK -> Optional.of(PartDrawing.topmark(look));
                  case LIGHT -> Optional.empty();
                });
  }

  /**
   * The strip of an option that is chosen by its rhythm, or stands in for a light that was stopped;
   * empty where its rhythm is what is asked, or there is none.
   */
  public Optional<Svg> option(Item item, Option option) {
    boolean stopped = asks(item, LightQuestion.WHICH_LIGHT);
    return stopped || asks(item, LightQuestion.RHYTHM)
        ? strip(item, option, !stopped)
        : Optional.empty();
  }

  /** The strip of the light that an option stands for, its colour named; empty if for none. */
  public Optional<Svg> strip(Item item, Option option) {
    return strip(item, option, true).map(svg -> svg.named(wording.text("page.picture.strip")));
  }

  /** All strips of an item show the same time. */
  private static Optional<Svg> strip(Item item, Option option, boolean letters) {
    List<LightTimeline> all =
        item.options().stream()
            .map(Option::rhythm)
            .filter(Objects::nonNull)
            .map(LightCharacter::timeline)
            .toList();
    return Optional.ofNullable(option.rhythm())
        .map(LightCharacter::timeline)
        .map(each -> LightStrip.alone(each, LightStrip.span(all), Lettering.ENGLISH, letters));
  }

  /** Whether the item asks this about a light. */
  public static boolean asks(Item item, LightQuestion question) {
    return item.scenario().question() == question;
  }

  /** Whether the picture that is asked about is a chart, so that the answer's holds all of it. */
  public static boolean isChart(Item item) {
    return CHARTS.contains(item.form());
  }

  /** A mark by day. */
  public Svg mark(Appearance mark) {
    return MarkDrawing.near(mark, null).named(wording.text("page.picture.near"));
  }

  /** What a learner sees after the answer, without the plan. */
  public Svg seen(Item item) {
    return ItemPicture.answered(item, null).view().named(name(item));
  }

  /**
   * The safe way past the mark, and the way of the answer where it is another; empty where the item
   * asks for none.
   *
   * @param chosen the value of the option chosen; null for "not sure"
   */
  public Optional<Svg> ways(Item item, @Nullable String chosen) {
    String name =
        item.scenario().sailing() == null ? "page.picture.answered-plan" : "page.picture.tracks";
    return Optional.ofNullable(ItemPicture.answered(item, chosen).plan())
        .map(plan -> plan.named(wording.text(name)));
  }

  /**
   * The mark that the learner took it for, at night the strip of its light; empty where the item
   * asks for no kind of mark.
   */
  public Optional<Svg> takenFor(Item item, String chosen) {
    return TakenFor.of(item, chosen)
        .flatMap(mark -> drawn(mark.look(), item))
        .map(svg -> svg.named(name(item)));
  }

  private static Optional<Svg> drawn(MarkLook look, Item item) {
    View view = item.scenario().situation().view();
    if (view == View.LIGHT) {
      return look.lights().stream()
          .findFirst()
          .map(light -> LightStrip.of(light.timeline(), Lettering.ENGLISH, true));
    }
    Appearance appearance = look.typical();
    return Optional.of(
        view == View.NEAR ? MarkDrawing.near(appearance, null) : MarkDrawing.distant(appearance));
  }

  private String name(Item item) {
    if (item.scenario().lookout() != null) {
      return wording.text("page.picture." + kind(item.scenario().lookout()));
    }
    if (item.form() == Form.PASSAGE) {
      return wording.text("page.picture.passage");
    }
    if (item.scenario().question() != null) {
      return wording.text("page.picture.light." + item.scenario().question().id());
    }
    boolean water = item.scenario().marks().isEmpty() || item.form() == Form.DIRECTION;
    String view = water ? "water" : item.scenario().situation().view().id();
    return wording.text(
        switch (item.form()) {
          case NUMBER -> "page.picture.channel";
          case CHART_OVER_RULE -> "page.picture.chart";
          case CLEARANCE -> "page.picture.chart.clearance";
          case LEADING -> "page.picture.leading." + view;
          default -> "page.picture." + view;
        });
  }

  private static String kind(Lookout lookout) {
    if (lookout instanceof RangeLookout range) {
      return range.visibility() == null ? "horizon" : "luminous-ranges";
    }
    return "sectors";
  }
}
