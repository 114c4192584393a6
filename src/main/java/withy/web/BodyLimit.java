package withy.web;

import java.util.List;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.SizeLimitHandler;
import org.eclipse.jetty.util.Callback;

/** Holds the bodies of requests to a size, except where files are sent. */
final class BodyLimit extends SizeLimitHandler {
  /** Where files with waters are sent; a session is asked for before their bodies are read. */
  private static final List<String> FILES =
      List.of("/waters", "/api/waters", "/drill-sets", "/api/drill-sets");

  BodyLimit(long most) {
    super(most, -1);
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    Handler next = getHandler();
    boolean file = FILES.contains(Request.getPathInContext(request));
    return file && next != null
        ? next.handle(request, response, callback)
        : super.handle(request, response, callback);
  }
}
