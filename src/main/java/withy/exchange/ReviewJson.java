package withy.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.measurement.Belief;
import withy.core.measurement.ClassRate;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Confusion;
import withy.core.measurement.FormAnalysis;
import withy.core.measurement.LearnerState;
import withy.core.measurement.Review;

/** A review as JSON; numbers in full, so that two who compute it agree to the last digit. */
public final class ReviewJson {
  private static final JsonFactory JSON = new JsonFactory();

  private final JsonGenerator out;

  private ReviewJson(JsonGenerator out) {
    this.out = out;
  }

  /** The review as one line of JSON, fields always in the same order. */
  public static String write(Review review) {
    Writer text = new StringWriter();
    try (JsonGenerator out = JSON.createGenerator(text)) {
      new ReviewJson(out).review(review);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void review(Review review) throws IOException {
    out.writeStartObject();
    array("concepts", review.concepts(), this::concept);
    array("learners", review.learners(), this::learner);
    array("confusions", review.confusions(), this::confusion);
    array("items", review.items(), this::form);
    out.writeEndObject();
  }

  private void concept(ConceptError error) throws IOException {
    ClassRate rate = error.rate();
    out.writeStringField("concept", error.concept());
    out.writeNumberField("learners", rate.learners());
    out.writeNumberField("answers", rate.answers());
    out.writeNumberField("errorRate", rate.mean());
    out.writeNumberField("effectiveAnswers", rate.effectiveAnswers());
    out.writeNumberField("lower", rate.lower());
    out.writeNumberField("upper", rate.upper());
    out.writeNumberField("aboveTolerance", rate.aboveTolerance());
    out.writeStringField("verdict", error.verdict().id());
    out.writeBooleanField("wide", rate.wide());
    belief(error.beliefBehind());
  }

  private void belief(@Nullable Belief belief) throws IOException {
    if (belief == null) {
      out.writeNullField("belief");
      return;
    }
    out.writeObjectFieldStart("belief");
    out.writeStringField("misconception", belief.misconception());
    out.writeNumberField("learners", belief.learners());
    out.writeNumberField("expected", belief.expected());
    out.writeEndObject();
  }

  private void learner(LearnerState state) throws IOException {
    out.writeStringField("learner", state.learner());
    out.writeStringField("concept", state.concept());
    out.writeNumberField("answers", state.answers());
    out.writeNumberField("knows", state.knows());
    out.writeObjectFieldStart("misconceptions");
    for (Map.Entry<String, Double> each : state.misconceptions().entrySet()) {
      out.writeNumberField(each.getKey(), each.getValue());
    }
    out.writeEndObject();
    out.writeNumberField("guesses", state.guesses());
  }

  private void confusion(Confusion confusion) throws IOException {
    out.writeStringField("shown", confusion.shown());
    out.writeStringField("answered", confusion.answered());
    out.writeNumberField("learners", confusion.learners());
    out.writeNumberField("times", confusion.times());
    out.writeNumberField("offered", confusion.offered());
    out.writeNumberField("adjustedP", confusion.adjustedP());
    out.writeBooleanField("listed", confusion.listed());
  }

  private void form(FormAnalysis form) throws IOException {
    out.writeStringField("form", form.form());
    out.writeNumberField("answers", form.answers());
    out.writeNumberField("facility", form.facility());
    Double discrimination = form.discrimination();
    if (discrimination == null) {
      out.writeNullField("discrimination");
    } else {
      out.writeNumberField("discrimination", discrimination);
    }
  }

  private <T> void array(String name, Iterable<T> values, Fields<T> fields) throws IOException {
    out.writeArrayFieldStart(name);
    for (T value : values) {
      out.writeStartObject();
      fields.write(value);
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private interface Fields<T> {
    void write(T value) throws IOException;
  }
}
