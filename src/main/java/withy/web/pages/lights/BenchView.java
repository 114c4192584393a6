package withy.web.pages.lights;

import java.util.List;
import withy.web.pages.Link;

/** The light bench with what was asked of it. */
record BenchView(
    String first,
    String second,
    String pace,
    boolean wall,
    boolean still,
    List<BenchLight> lights,
    List<Link> paces,
    Link wallLink,
    List<ClassRow> classes) {}
