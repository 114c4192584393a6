package withy.drawing;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;

/** Looks to draw, and drawings taken apart again. */
final class Pictures {
  private Pictures() {}

  /** Every body of a kind under a practice, with and without topmark, lit and unlit. */
  static List<Appearance> looks(Practice practice, MarkKind kind) {
    return looks(MarkingRules.look(practice, kind));
  }

  private static List<Appearance> looks(MarkLook look) {
    List<Appearance> looks = new ArrayList<>(look.appearances(null));
    if (!look.lights().isEmpty()) {
      looks.addAll(look.appearances(light(look)));
    }
    return looks;
  }

  /** Every look of every mark that a practice describes. */
  static List<Appearance> looks(Practice practice) {
    return practice.marks().stream().flatMap(each -> looks(each.look()).stream()).toList();
  }

  /** The look that shows most: with topmark, on the last body that can carry one. */
  static Appearance typical(Practice practice, MarkKind kind) {
    List<Appearance> looks = looks(practice, kind);
    Appearance shown = looks.get(0);
    for (Appearance each : looks) {
      shown = each.topmark() != null && each.light() != null ? each : shown;
      if (shown.body() == BodyShape.PILLAR && shown.topmark() != null && shown.light() != null) {
        return shown;
      }
    }
    return shown;
  }

  static @Nullable LightCharacter light(MarkLook look) {
    return look.lights().isEmpty() ? null : look.lights().get(0);
  }

  static Document parsed(Svg svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg.text())));
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError("not well-formed: " + svg, e);
    }
  }

  static List<Element> elements(Svg svg) {
    NodeList nodes = parsed(svg).getElementsByTagName("*");
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }
}
