package withy.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import withy.core.Term;
import withy.core.measurement.Outcome;
import withy.core.simulation.ClassFigures;
import withy.core.simulation.PolicyFigures;
import withy.core.simulation.Population;
import withy.core.simulation.ReadinessFigures;
import withy.core.simulation.Simulation;
import withy.core.simulation.Target;

/** Figures of a simulation as JSON; shares to four places. */
public final class SimulationJson {
  private static final JsonFactory JSON = new JsonFactory();
  private static final int PLACES = 4;

  private final JsonGenerator out;

  private SimulationJson(JsonGenerator out) {
    this.out = out;
  }

  /** What was simulated and what came of it as one object, fields always in the same order. */
  public static String write(Simulation simulation, Simulation.Figures figures) {
    Writer text = new StringWriter();
    try (JsonGenerator out = JSON.createGenerator(text).useDefaultPrettyPrinter()) {
      new SimulationJson(out).simulation(simulation, figures);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void simulation(Simulation simulation, Simulation.Figures figures) throws IOException {
    out.writeStartObject();
    planted(simulation);
    out.writeArrayFieldStart("policies");
    for (PolicyFigures each : figures.policies()) {
      policy(each);
    }
    out.writeEndArray();
    classes("classRule", figures.rule());
    classes("pooledAnswers", figures.pooled());
    readiness(figures.readiness());
    out.writeArrayFieldStart("targets");
    for (Target each : Target.of(figures)) {
      target(each);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void planted(Simulation simulation) throws IOException {
    out.writeStringField("practice", simulation.practice().id());
    out.writeArrayFieldStart("concepts");
    for (Term each : simulation.concepts()) {
      out.writeString(each.id());
    }
    out.writeEndArray();
    out.writeNumberField("learners", simulation.learners());
    out.writeNumberField("items", simulation.items());
    out.writeNumberField("seed", simulation.seed());
    Population population = simulation.population();
    out.writeObjectFieldStart("planted");
    share("knows", population.knows());
    share("firstBelief", population.first());
    share("secondBelief", population.second());
    share("leastSlip", population.leastSlip());
    share("mostSlip", population.mostSlip());
    share("leastPull", population.leastPull());
    share("mostPull", population.mostPull());
    share("learning", population.learning());
    out.writeEndObject();
  }

  private void policy(PolicyFigures figures) throws IOException {
    out.writeStartObject();
    out.writeStringField("policy", figures.policy().id());
    out.writeArrayFieldStart("after");
    for (int each : figures.lengths()) {
      out.writeNumber(each);
    }
    out.writeEndArray();
    shares("recallAtTenPercentFalseAlarms", figures.recall());
    shares("listed", figures.flagged());
    shares("listedRightly", figures.precision());
    shares("misconceptionNamed", figures.named());
    shares("misconceptionNamedSurely", figures.namedSurely());
    shares("mastered", figures.mastered());
    if (figures.itemsToRecall() == null) {
      out.writeNullField("itemsToRecall90");
    } else {
      out.writeNumberField("itemsToRecall90", figures.itemsToRecall());
    }
    share("success", figures.success());
    out.writeEndObject();
  }

  private void classes(String field, ClassFigures figures) throws IOException {
    out.writeObjectFieldStart(field);
    out.writeNumberField("learnersOfAClass", Simulation.CLASS);
    share("recall", figures.recall());
    share("falseAlarms", figures.falseAlarms());
    share("classesWithFalseAlarm", figures.classesWithFalseAlarm());
    share("falseDiscoveries", figures.falseDiscoveries());
    share("coverageOf90PercentInterval", figures.coverage());
    out.writeEndObject();
  }

  private void readiness(ReadinessFigures figures) throws IOException {
    out.writeObjectFieldStart("readiness");
    outcome("right60", figures.notReady());
    outcome("right85", figures.ready());
    outcome("twoConceptsUnknown", figures.mixed());
    share("twoConceptsUnknownByBlueprint", figures.blueprint());
    share("twoConceptsUnknownByAdaptiveDrill", figures.adaptive());
    out.writeEndObject();
  }

  private void outcome(String field, Outcome outcome) throws IOException {
    out.writeObjectFieldStart(field);
    share("ready", outcome.ready());
    share("notReady", outcome.notReady());
    share("undecided", outcome.undecided());
    share("answers", outcome.answers());
    out.writeEndObject();
  }

  private void target(Target target) throws IOException {
    out.writeStartObject();
    out.writeStringField("figure", target.figure());
    if (!Double.isInfinite(target.least())) {
      share("least", target.least());
    }
    if (!Double.isInfinite(target.most())) {
      share("most", target.most());
    }
    share("value", target.value());
    out.writeBooleanField("met", target.isMet());
    out.writeEndObject();
  }

  private void shares(String field, List<Double> shares) throws IOException {
    out.writeArrayFieldStart(field);
    for (double each : shares) {
      number(each);
    }
    out.writeEndArray();
  }

  private void share(String field, double value) throws IOException {
    out.writeFieldName(field);
    number(value);
  }

  /** Null where nothing could be counted. */
  private void number(double value) throws IOException {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      out.writeNull();
    } else {
      out.writeNumber(BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_EVEN));
    }
  }
}
