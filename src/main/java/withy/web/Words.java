package withy.web;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The server's own texts from the message bundle. */
public final class Words {
  private final ResourceBundle bundle;

  private Words(ResourceBundle bundle) {
    this.bundle = bundle;
  }

  /** The texts in a language, or in English where there are none. */
  public static Words in(Locale locale) {
    return new Words(ResourceBundle.getBundle("messages", locale));
  }

  /** The text of a key with its places filled. */
  public String text(String key, Object... arguments) {
    return new MessageFormat(bundle.getString(key), Locale.ROOT).format(arguments);
  }
}
