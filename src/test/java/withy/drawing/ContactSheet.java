package withy.drawing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import withy.core.item.Composition;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;

/**
 * Writes sheets of pictures into {@code target/contact}, to be looked at before they are approved:
 * each appearance near, from afar and at night, as usual eyes see it and as others do.
 */
public final class ContactSheet {
  private static final Path FOLDER = Path.of("target/contact");

  private final StringBuilder page = new StringBuilder();

  private ContactSheet() {}

  /** Arguments: the width of a picture in CSS pixels, 240 where it is not given. */
  public static void main(String[] args) throws IOException {
    int width = args.length > 0 ? Integer.parseInt(args[0]) : 240;
    Files.createDirectories(FOLDER);
    Map<String, Map<String, Appearance>> sheets = new LinkedHashMap<>();
    for (Practice practice : Practice.values()) {
      sheets.put(practice.id(), kinds(practice));
    }
    sheets.putAll(Specimens.sheets());
    for (Map.Entry<String, Map<String, Appearance>> each : sheets.entrySet()) {
      new ContactSheet().marks(each.getValue()).write(each.getKey(), width, "none");
    }
    for (Seen.Eyes eyes : Seen.Eyes.values()) {
      String name = "eyes-" + eyes.name().toLowerCase(java.util.Locale.ROOT);
      new ContactSheet().near(Specimens.everyKind()).write(name, width, eyes.name());
    }
    scenes(width);
    items(width);
  }

  private static void scenes(int width) throws IOException {
    ContactSheet sheet = new ContactSheet();
    Scenes.all().forEach(sheet::cell);
    sheet.write("scenes", width + 80, "none");
  }

  private static void items(int width) throws IOException {
    ContactSheet sheet = new ContactSheet();
    for (Practice practice : Practice.values()) {
      for (int i = 0; i < 40; i++) {
        Item item =
            ItemGenerator.item(practice, new Composition(List.of(), List.of(), null, 60), 7, i);
        ItemPicture picture = ItemPicture.question(item);
        if (picture.plan() != null) {
          sheet.cell(practice.id() + " " + item.form().id(), picture.view());
          sheet.cell(practice.id() + " " + item.form().id(), picture.plan());
        }
      }
    }
    sheet.write("items", width, "none");
  }

  private static Map<String, Appearance> kinds(Practice practice) {
    Map<String, Appearance> kinds = new LinkedHashMap<>();
    for (MarkDescription mark : practice.marks()) {
      for (Appearance each : mark.look().appearances(Pictures.light(mark.look()))) {
        kinds.put(mark.id() + " " + each.body().id() + " " + kinds.size(), each);
      }
    }
    return kinds;
  }

  private ContactSheet marks(Map<String, Appearance> marks) {
    marks.forEach(
        (name, look) -> {
          cell(name, MarkDrawing.near(look, label(name)));
          cell("", MarkDrawing.distant(look));
          LightCharacter light = look.light();
          if (light != null) {
            cell("", MarkDrawing.night(light));
          }
        });
    return this;
  }

  private ContactSheet near(Map<String, Appearance> marks) {
    marks.forEach((name, look) -> cell(name, MarkDrawing.near(look, null)));
    return this;
  }

  private static String label(String name) {
    return name.matches(".*(port-hand|labelled).*")
        ? "17"
        : name.contains("starboard") ? "8" : null;
  }

  private void cell(String name, Svg svg) {
    page.append("<div>").append(svg.text()).append("<p>").append(name).append("</p></div>\n");
  }

  private void write(String name, int width, String eyes) throws IOException {
    String head =
        "<!doctype html><meta charset='utf-8'><style>body{margin:4px;background:#f6f2e9;"
            + "font:11px sans-serif;filter:url(#"
            + eyes
            + ")}div{float:left;margin:2px;width:"
            + width
            + "px}p{margin:0;height:14px;overflow:hidden}svg{display:block}div>svg{width:100%;height:"
            + width * 280 / 320
            + "px}</style>"
            + filter(eyes)
            + "\n";
    Files.writeString(FOLDER.resolve(name + ".html"), head + page, StandardCharsets.UTF_8);
  }

  private static String filter(String eyes) {
    if (eyes.equals("none")) {
      return "";
    }
    return "<svg width='0' height='0' style='position:absolute'><filter id='"
        + eyes
        + "' color-interpolation-filters='linearRGB'><feColorMatrix values='"
        + Seen.Eyes.valueOf(eyes).matrix()
        + "'/></filter></svg>";
  }
}
