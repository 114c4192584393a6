package withy.web.pages;

import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import withy.usecase.SentFile;
import withy.usecase.UnfitWater;
import withy.web.Visit;

/** The text that a form sends as a file, or typed where the file can be mended. */
public final class SentText {
  private SentText() {}

  /**
   * The file that was chosen, else what stands in the text field.
   *
   * @throws UnfitWater if the file is not UTF-8
   */
  public static String of(Visit visit, Form form) throws UnfitWater {
    UploadedFile file = visit.context().uploadedFile("file");
    if (file == null || file.size() == 0) {
      return form.text("text");
    }
    try (InputStream in = file.content()) {
      return SentFile.text(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
