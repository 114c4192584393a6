package withy.store;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** Thrown where a data folder or a copy of it cannot be used; says why in one plain sentence. */
public final class StoreRefused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Problem problem;
  private final transient List<Object> details;

  StoreRefused(Problem problem, Throwable cause, Object... details) {
    super(problem + " " + List.of(details), cause);
    this.problem = problem;
    this.details = List.of(details);
  }

  StoreRefused(Problem problem, Object... details) {
    super(problem + " " + List.of(details));
    this.problem = problem;
    this.details = List.of(details);
  }

  /** What is in the way. */
  public enum Problem {
    /** Another program has the database open. */
    IN_USE("data.in-use"),
    /** The database was written by a newer version. */
    NEWER("data.newer"),
    /** Bringing the database up to date failed; it stands as before. */
    MIGRATION_FAILED("data.migration-failed"),
    /** The database was left half brought up to date, or its history was changed. */
    BROKEN_HISTORY("data.broken-history"),
    /** The file is no database, or damaged. */
    UNREADABLE("data.unreadable"),
    /** There is no database in the folder. */
    NO_DATABASE("data.no-database"),
    /** The folder holds something already. */
    NOT_EMPTY("data.not-empty"),
    /** The folder or file cannot be written. */
    UNWRITABLE("data.unwritable"),
    /** The file for the copy is there already. */
    FILE_THERE("data.file-there"),
    /** The file is no copy of a database of ours. */
    NO_BACKUP("data.no-backup"),
    /** What the copy holds is not what the database holds. */
    BACKUP_DIFFERS("data.backup-differs");

    private final String key;

    Problem(String key) {
      this.key = key;
    }

    /** Whether whoever named a file or a folder named the wrong one. */
    public boolean blamesArguments() {
      return switch (this) {
        case NO_DATABASE, NOT_EMPTY, FILE_THERE, NO_BACKUP -> true;
        default -> false;
      };
    }
  }

  /** What is in the way. */
  public Problem problem() {
    return problem;
  }

  /** What is in the way, as one line. */
  public String sentence(Locale locale) {
    ResourceBundle words = ResourceBundle.getBundle("messages", locale);
    return new MessageFormat(words.getString(problem.key), locale).format(details.toArray());
  }
}
