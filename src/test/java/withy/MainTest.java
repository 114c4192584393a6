package withy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class MainTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "light Q",
        "mark special --practice usa",
        "scenarios --practice usa --count 2",
        "light --help"
      })
  void failsWhenTheResultCannotBeWritten(String typed) {
    StringWriter complaints = new StringWriter();
    PrintStream console = System.out;
    System.setOut(new PrintStream(new FullDisk(), true));
    try {
      CommandLine command = Main.commandLine().setErr(new PrintWriter(complaints, true));
      assertThat(command.execute(typed.split(" "))).isEqualTo(1);
    } finally {
      System.setOut(console);
    }
    assertThat(complaints.toString().lines())
        .containsExactly("standard output cannot be written: the result is not whole");
  }

  private static final class FullDisk extends OutputStream {
    @Override
    public void write(int octet) throws IOException {
      throw new IOException("No space left on device");
    }
  }
}
