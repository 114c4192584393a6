package withy.web;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The addresses at which phones on the same network find this machine. */
public final class LanAddresses {
  /** Adapters of virtual machines and containers, which no phone can reach. */
  private static final List<String> VIRTUAL =
      List.of("docker", "br-", "veth", "virbr", "vmnet", "vboxnet", "vmware", "virtualbox");

  private LanAddresses() {}

  /** The site-local IPv4 addresses of the real adapters that are up; may be none. */
  public static List<String> siteLocal() {
    List<String> found = new ArrayList<>();
    try {
      for (NetworkInterface each : NetworkInterface.networkInterfaces().toList()) {
        if (isReal(each)) {
          each.inetAddresses().filter(LanAddresses::isSiteLocal).forEach(a -> found.add(text(a)));
        }
      }
    } catch (SocketException unknown) {
      return List.of();
    }
    return found;
  }

  /** The addresses to open in a browser when the server listens at a host and port. */
  public static List<String> toOpen(String host, int port) {
    List<String> urls = new ArrayList<>();
    if (isAny(host)) {
      siteLocal().forEach(address -> urls.add("http://" + address + ":" + port));
      urls.add("http://localhost:" + port);
    } else {
      urls.add("http://" + host + ":" + port);
    }
    return urls;
  }

  /**
   * Where other machines find the server that a visit calls: not at localhost, which is themselves.
   */
  public static String origin(Visit visit) {
    String host = visit.context().host() == null ? "localhost" : visit.context().host();
    String name = host.replaceFirst(":\\d+$", "");
    List<String> lan = siteLocal();
    boolean own = List.of("localhost", "127.0.0.1", "[::1]").contains(name);
    String seen = own && !lan.isEmpty() ? lan.get(0) + host.substring(name.length()) : host;
    return visit.context().scheme() + "://" + seen;
  }

  /** Whether a host stands for every address of this machine. */
  public static boolean isAny(String host) {
    return host.equals("0.0.0.0") || host.equals("::") || host.equals("[::]");
  }

  private static boolean isReal(NetworkInterface adapter) throws SocketException {
    String name = (adapter.getName() + " " + adapter.getDisplayName()).toLowerCase(Locale.ROOT);
    boolean named = VIRTUAL.stream().anyMatch(name::contains);
    return adapter.isUp() && !adapter.isLoopback() && !adapter.isVirtual() && !named;
  }

  private static boolean isSiteLocal(InetAddress address) {
    return address instanceof Inet4Address && address.isSiteLocalAddress();
  }

  private static String text(InetAddress address) {
    return address.getHostAddress();
  }
}
