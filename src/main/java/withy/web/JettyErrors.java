package withy.web;

import java.nio.ByteBuffer;
import java.util.UUID;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import withy.wording.Wording;

/** Says no where a request is turned away before any route sees it; keeps causes to itself. */
final class JettyErrors extends ErrorHandler {
  private static final Logger LOG = LoggerFactory.getLogger(JettyErrors.class);
  private static final String RETRY_SECONDS = "2";

  private final Wording words;

  JettyErrors(Wording words) {
    this.words = words;
  }

  @Override
  public boolean errorPageForMethod(String method) {
    return true;
  }

  @Override
  protected void generateResponse(
      Request request,
      Response response,
      int code,
      @Nullable String message,
      @Nullable Throwable cause,
      Callback callback) {
    put(response.getHeaders(), code);
    byte[] body = body(code, request.getHttpURI().getPath(), cause);
    response.write(true, ByteBuffer.wrap(body), callback);
  }

  @Override
  public ByteBuffer badMessageError(
      int status, @Nullable String reason, HttpFields.Mutable fields) {
    put(fields, status);
    return ByteBuffer.wrap(body(status, "", null));
  }

  private static void put(HttpFields.Mutable fields, int status) {
    SecurityHeaders.put(fields);
    fields.put(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
    if (status == Fault.TOO_LARGE.status()) {
      fields.put(HttpHeader.CONNECTION, "close"); // the rest of the body is not read
    }
    if (status == Fault.UNAVAILABLE.status()) {
      fields.put(HttpHeader.RETRY_AFTER, RETRY_SECONDS);
    }
  }

  private byte[] body(int status, @Nullable String path, @Nullable Throwable cause) {
    Fault fault = Fault.ofStatus(status);
    String instance = path == null ? "" : path;
    if (fault == Fault.INTERNAL) {
      String reference = UUID.randomUUID().toString();
      LOG.error("unexpected, reference {}", reference, cause);
      return Json.bytes(Problem.of(Declined.of(fault, reference), words, instance, reference));
    }
    return Json.bytes(Problem.of(Declined.of(fault), words, instance));
  }
}
