package withy.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.Locale;
import java.util.UUID;
import org.eclipse.jetty.http.HttpException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import withy.usecase.Refused;
import withy.wording.Wording;

/**
 * Says no in the voice of the surface that was called. Nothing of an exception reaches the caller:
 * what is unexpected goes to the log under a reference that the caller is told.
 */
final class ErrorAnswers {
  private static final Logger LOG = LoggerFactory.getLogger(ErrorAnswers.class);

  private final Wording words;
  private final ErrorPage page;

  ErrorAnswers(Wording words, ErrorPage page) {
    this.words = words;
    this.page = page;
  }

  void register(RoutesConfig routes) {
    routes.exception(Declined.class, (declined, context) -> answer(declined, context));
    routes.exception(Refused.class, (refused, context) -> answer(Declined.of(refused), context));
    routes.exception(HttpResponseException.class, this::answerRouter);
    routes.exception(Exception.class, this::answerUnexpected);
  }

  private void answerRouter(HttpResponseException thrown, Context context) {
    String allowed = thrown.getDetails().get("availableMethods");
    if (allowed != null) {
      context.header("Allow", allowed);
    }
    answer(Declined.of(Fault.ofStatus(thrown.getStatus())), context);
  }

  void answerUnexpected(Throwable thrown, Context context) {
    Integer status = httpStatus(thrown);
    if (status != null && status < 500) {
      answer(Declined.of(Fault.ofStatus(status)), context);
      return;
    }
    String reference = UUID.randomUUID().toString();
    LOG.error("unexpected, reference {}", reference, thrown);
    Declined declined = Declined.of(Fault.INTERNAL, reference);
    write(declined, Problem.of(declined, words, context.path(), reference), context);
  }

  /** The status that the server itself gives what it throws while it reads a request. */
  private static @Nullable Integer httpStatus(Throwable thrown) {
    for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
      if (cause instanceof HttpException known) {
        return known.getCode();
      }
    }
    return null;
  }

  private void answer(Declined declined, Context context) {
    write(declined, Problem.of(declined, words, context.path()), context);
  }

  private void write(Declined declined, Problem problem, Context context) {
    Long wait = declined.retryAfterSeconds();
    if (wait != null) {
      context.header("Retry-After", Long.toString(wait));
    }
    if (declined.fault() == Fault.TOO_LARGE) {
      context.header("Connection", "close"); // the rest of the body is not read
    }
    context.header("Cache-Control", "no-store").status(problem.status());
    if (speaksToPeople(context)) {
      context.html(page.html(problem)).contentType("text/html; charset=utf-8");
    } else {
      context.result(Json.bytes(problem)).contentType(Problem.MEDIA_TYPE);
    }
  }

  private static boolean speaksToPeople(Context context) {
    String accept = context.header("Accept");
    boolean html = accept == null || accept.toLowerCase(Locale.ROOT).contains("text/html");
    return Surface.of(context.path()) == Surface.PAGE && html;
  }
}
