package withy.core.light;

import java.util.Arrays;
import java.util.List;
import withy.core.light.LightNotationException.Reason;
import withy.core.light.Token.Kind;

/** The tokens of a text that are still to be read. */
final class TokenStream {

  private static final int SHOWN = 30;

  private final String text;
  private final List<Token> tokens;
  private int next = 0;
  private Token current;

  TokenStream(String text) {
    this.text = text;
    this.tokens = Tokenizer.tokens(text);
    this.current = tokens.get(0);
  }

  Token peek() {
    return current;
  }

  Token peek(int ahead) {
    return ahead == 0 ? current : tokens.get(Math.min(next + ahead, tokens.size() - 1));
  }

  Token take() {
    Token taken = current;
    next = Math.min(next + 1, tokens.size() - 1);
    current = tokens.get(next);
    return taken;
  }

  boolean atEnd() {
    return current.is(Kind.END);
  }

  /** Takes the sign when it comes next. */
  boolean takes(String sign) {
    boolean comes = current.is(sign);
    if (comes) {
      take();
    }
    return comes;
  }

  /** Takes the word, whole, when it is one of these and comes next. */
  boolean takesWord(String... words) {
    boolean comes = comesWord(0, words);
    if (comes) {
      take();
    }
    return comes;
  }

  /** Whether one of these words comes so many tokens ahead. */
  boolean comesWord(int ahead, String... words) {
    Token token = peek(ahead);
    return token.is(Kind.WORD) && Arrays.asList(words).contains(token.small());
  }

  /** Takes these letters from the start of the next word when it begins with them. */
  boolean takesLetters(String letters) {
    if (!current.is(Kind.WORD) || !current.small().startsWith(letters)) {
      return false;
    }
    if (current.text().length() == letters.length()) {
      take();
    } else {
      current = current.after(letters.length());
    }
    return true;
  }

  /** The place in the stream, to come back to. */
  Mark mark() {
    return new Mark(next, current);
  }

  void back(Mark mark) {
    next = mark.next();
    current = mark.current();
  }

  /** The text from here to the end, shortened. */
  String rest() {
    return restFrom(current);
  }

  String restFrom(Token token) {
    String rest = text.substring(Math.min(token.place() - 1, text.length()));
    return rest.length() > SHOWN ? rest.substring(0, SHOWN) + "..." : rest;
  }

  LightNotationException fault(Token at, Reason reason, Object... arguments) {
    return new LightNotationException(reason, arguments).in(text, at.place());
  }

  /** A place in the stream; the token may be the rest of a word. */
  record Mark(int next, Token current) {}
}
