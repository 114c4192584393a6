package withy.web.pages;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.messageresolver.AbstractMessageResolver;

/** Finds the texts that templates ask for by key; a missing one is a fault, not a gap. */
final class PageMessages extends AbstractMessageResolver {
  @Override
  public String resolveMessage(
      ITemplateContext context, Class<?> origin, String key, Object @Nullable [] arguments) {
    return text(context.getLocale(), key, arguments == null ? new Object[0] : arguments);
  }

  @Override
  public String createAbsentMessageRepresentation(
      ITemplateContext context, Class<?> origin, String key, Object @Nullable [] arguments) {
    throw new MissingResourceException("no text for " + key, "messages", key);
  }

  private static String text(Locale locale, String key, Object... arguments) {
    String pattern = ResourceBundle.getBundle("messages", locale).getString(key);
    return new MessageFormat(pattern, locale).format(arguments);
  }
}
