package withy.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.http.HttpHeaders;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * A plain connection, for what no well-behaved client sends: the JDK's own loses an answer that
 * comes while it still sends the body.
 */
final class Wire {
  private static final String END = "\r\n";
  private static final int CHUNK = 16 * 1024;

  private Wire() {}

  /** What the server answered. */
  record Answer(int status, HttpHeaders headers, String body) {}

  /** Everything that the server answers until it closes. */
  static String raw(int port, byte[] request) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", port)) {
      send(socket, request);
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** The server may have answered and closed before it was all sent. */
  private static void send(Socket socket, byte[] request) {
    try {
      OutputStream out = socket.getOutputStream();
      out.write(request);
      out.flush();
      socket.shutdownOutput();
    } catch (IOException closed) {
      // its answer is read all the same
    }
  }

  /** A request with a body, its length said. */
  static Answer post(int port, String path, List<String> headers, byte[] body) throws IOException {
    List<String> said = new ArrayList<>(headers);
    said.add("Content-Length: " + body.length);
    return answer(raw(port, request(path, said, body)));
  }

  /** A request with a body in chunks, its length not said. */
  static Answer postChunks(int port, String path, List<String> headers, byte[] body)
      throws IOException {
    List<String> said = new ArrayList<>(headers);
    said.add("Transfer-Encoding: chunked");
    ByteArrayOutputStream chunks = new ByteArrayOutputStream();
    for (int from = 0; from < body.length; from += CHUNK) {
      int size = Math.min(CHUNK, body.length - from);
      chunks.writeBytes(ascii(Integer.toHexString(size) + END));
      chunks.write(body, from, size);
      chunks.writeBytes(ascii(END));
    }
    chunks.writeBytes(ascii("0" + END + END));
    return answer(raw(port, request(path, said, chunks.toByteArray())));
  }

  private static byte[] request(String path, List<String> headers, byte[] body) {
    ByteArrayOutputStream request = new ByteArrayOutputStream();
    request.writeBytes(ascii("POST " + path + " HTTP/1.1" + END + "Host: localhost" + END));
    headers.forEach(each -> request.writeBytes(ascii(each + END)));
    request.writeBytes(ascii(END));
    request.writeBytes(body);
    return request.toByteArray();
  }

  private static Answer answer(String raw) {
    int head = raw.indexOf(END + END);
    List<String> lines = List.of(raw.substring(0, head).split(END));
    Map<String, List<String>> headers = new TreeMap<>();
    for (String each : lines.subList(1, lines.size())) {
      int colon = each.indexOf(':');
      String name = each.substring(0, colon).toLowerCase(Locale.ROOT);
      headers
          .computeIfAbsent(name, none -> new ArrayList<>())
          .add(each.substring(colon + 1).strip());
    }
    int status = Integer.parseInt(lines.get(0).split(" ")[1]);
    return new Answer(
        status, HttpHeaders.of(headers, (name, value) -> true), raw.substring(head + 4));
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
