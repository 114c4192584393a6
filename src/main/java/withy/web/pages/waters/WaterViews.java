package withy.web.pages.waters;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;
import withy.core.waterway.Waterway;
import withy.drawing.ChartDrawing;
import withy.drawing.ChartOptions;
import withy.drawing.Lettering;
import withy.drawing.Svg;
import withy.usecase.ComposeDrill;
import withy.usecase.ListWaters.Listed;
import withy.usecase.WaterProblem;
import withy.web.pages.Link;
import withy.web.pages.PageRenderer;

/** Puts waters into charts and words. */
final class WaterViews {
  private final PageRenderer pages;
  private final ComposeDrill composeDrill;

  WaterViews(PageRenderer pages, ComposeDrill composeDrill) {
    this.pages = pages;
    this.composeDrill = composeDrill;
  }

  WatersView list(
      List<Listed> waters,
      @Nullable String news,
      String title,
      String text,
      List<WaterProblem> problems) {
    return new WatersView(
        waters.stream().map(this::row).toList(), news, title, text, placed(problems));
  }

  private WaterRow row(Listed listed) {
    SurveyedWater water = listed.water();
    String about =
        text(
            listed.own() == null ? "page.waters.authored" : "page.waters.own",
            water.marks().size());
    Waterway marked = water.marked(Practice.IALA_A, Chance.of(0, 0));
    Svg chart = ChartDrawing.of(marked, Lettering.ENGLISH, ChartOptions.plain().withoutLabels());
    return new WaterRow(water.id(), water.title(), about, chart.named(chartName(water)));
  }

  WaterView one(
      Listed listed,
      Practice practice,
      TimeOfDay time,
      @Nullable String news,
      List<WaterProblem> remarks) {
    SurveyedWater water = listed.water();
    return new WaterView(
        water.id(),
        water.title(),
        listed.own() != null,
        news,
        chart(water, practice, time),
        practices(water, practice, time),
        times(water, practice, time),
        facts(water, practice),
        placed(remarks));
  }

  private Svg chart(SurveyedWater water, Practice practice, TimeOfDay time) {
    ChartOptions options = ChartOptions.plain();
    Waterway marked = water.marked(practice, Chance.of(0, 0));
    return ChartDrawing.of(
            marked, Lettering.ENGLISH, time == TimeOfDay.NIGHT ? options.atNight() : options)
        .named(chartName(water));
  }

  private String chartName(SurveyedWater water) {
    return text("page.water.chart", water.title());
  }

  private List<Link> practices(SurveyedWater water, Practice shown, TimeOfDay time) {
    List<Link> links = new ArrayList<>();
    for (Practice each : Practice.values()) {
      links.add(link(water, each, time, pages.wording().name(each), each.equals(shown)));
    }
    return links;
  }

  private List<Link> times(SurveyedWater water, Practice practice, TimeOfDay shown) {
    List<Link> links = new ArrayList<>();
    for (TimeOfDay each : TimeOfDay.values()) {
      links.add(link(water, practice, each, pages.wording().name(each), each == shown));
    }
    return links;
  }

  private static Link link(
      SurveyedWater water, Practice practice, TimeOfDay time, String text, boolean here) {
    String address = "/waters/" + water.id() + "?practice=" + practice.id() + "&time=" + time.id();
    return new Link(text, address, here);
  }

  private List<String> facts(SurveyedWater water, Practice practice) {
    double cables = 1852.0 / 10;
    List<String> facts = new ArrayList<>();
    facts.add(
        text(
            "page.water.size",
            Math.rint(water.depths().width() / cables),
            Math.rint(water.depths().height() / cables),
            water.tide()));
    List<String> concepts =
        composeDrill
            .measurable(practice, new Composition(List.of(), List.of(), null, 1).in(water))
            .stream()
            .map(each -> pages.wording().name(each))
            .toList();
    facts.add(
        concepts.isEmpty()
            ? text("page.water.asks-nothing")
            : text("page.water.asks", String.join(", ", concepts)));
    return facts;
  }

  private List<PlacedProblem> placed(List<WaterProblem> problems) {
    return problems.stream()
        .map(
            each ->
                new PlacedProblem(
                    each.place(), text("water.problem." + each.key(), each.arguments().toArray())))
        .toList();
  }

  private String text(String key, Object... arguments) {
    return pages.wording().text(key, arguments);
  }
}
