package withy.web.pages;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.linkbuilder.StandardLinkBuilder;
import org.thymeleaf.messageresolver.AbstractMessageResolver;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import withy.web.Assets;
import withy.wording.Wording;

/** Makes a page from a template and a view. */
final class Templates {
  private final TemplateEngine engine = new TemplateEngine();
  private final Wording wording;
  private final Map<String, String> assets;

  Templates(Wording wording, Assets assets) {
    this.wording = wording;
    this.assets =
        Map.of(
            "css", assets.url("withy.css"),
            "js", assets.url("withy.js"),
            "wall", assets.url("wall.js"),
            "icon", assets.url("withy.svg"));
    ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver();
    resolver.setPrefix("templates/");
    resolver.setSuffix(".html");
    resolver.setTemplateMode(TemplateMode.HTML);
    resolver.setCharacterEncoding("UTF-8");
    engine.setTemplateResolver(resolver);
    engine.setMessageResolver(new Messages());
    engine.setLinkBuilder(new RootedLinks());
  }

  /**
   * The page that a template makes of a view.
   *
   * @param name of the template without its ending, {@code join/entry}
   * @param view what the template knows as {@code view}: finished text and pictures
   */
  String page(String name, Frame frame, Object view) {
    Locale locale = wording.locale();
    Map<String, Object> variables = Map.of("frame", frame, "view", view, "assets", assets);
    return engine.process(name, new Context(locale, variables));
  }

  /** The texts that templates ask for by key; a missing one is a fault, not a gap. */
  private final class Messages extends AbstractMessageResolver {
    @Override
    public String resolveMessage(
        ITemplateContext context,
        @Nullable Class<?> origin,
        String key,
        Object @Nullable [] arguments) {
      return arguments == null ? wording.text(key) : wording.text(key, arguments);
    }

    @Override
    public String createAbsentMessageRepresentation(
        ITemplateContext context,
        @Nullable Class<?> origin,
        String key,
        Object @Nullable [] arguments) {
      throw new IllegalArgumentException("no words for '" + key + "'");
    }
  }

  /** Links from the root of the server, which is where it stands. */
  private static final class RootedLinks extends StandardLinkBuilder {
    @Override
    protected String computeContextPath(
        IExpressionContext context, String base, @Nullable Map<String, Object> parameters) {
      return "";
    }
  }
}
