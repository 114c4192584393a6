package withy.web.pages;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.linkbuilder.StandardLinkBuilder;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Makes a page from a template and a view. */
public final class Templates {
  private final TemplateEngine engine = new TemplateEngine();
  private final String assets = Assets.version();

  public Templates() {
    ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver();
    resolver.setPrefix("templates/");
    resolver.setSuffix(".html");
    resolver.setTemplateMode(TemplateMode.HTML);
    resolver.setCharacterEncoding("UTF-8");
    engine.setTemplateResolver(resolver);
    engine.setMessageResolver(new PageMessages());
    engine.setLinkBuilder(new RootedLinks());
  }

  /**
   * The page that a template makes of a view.
   *
   * @param name of the template without its ending, {@code join/entry}
   * @param view what the template knows as {@code view}: finished text and pictures
   */
  public String page(String name, Frame frame, Object view) {
    Locale locale = Locale.forLanguageTag(frame.language());
    Map<String, Object> variables = Map.of("frame", frame, "view", view, "assets", assets);
    return engine.process(name, new Context(locale, variables));
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
