package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.UUID;
import org.jdbi.v3.core.statement.StatementContext;
import withy.core.response.Response;
import withy.usecase.StoredResponse;

/** Reads a response; the learner's nickname comes from the learner, who may be renamed. */
final class ResponseRow {
  static final String SELECT =
      "SELECT r.*, l.nickname FROM response r JOIN learner l ON l.id = r.learner";

  private ResponseRow() {}

  static StoredResponse read(ResultSet row, StatementContext context) throws SQLException {
    Response response =
        new Response(
            row.getString("nickname"),
            row.getString("assignment"),
            row.getString("item"),
            row.getString("form"),
            row.getString("practice"),
            Words.read(row.getString("concepts")),
            row.getString("answer_key"),
            row.getString("chosen"),
            row.getString("misconception"),
            Words.readOffered(row.getString("offered")),
            row.getBoolean("correct"),
            row.getLong("shown_ms"),
            Moments.read(row, "answered_at"),
            row.getBoolean("rapid"));
    return new StoredResponse(
        row.getObject("client_id", UUID.class),
        row.getString("learner"),
        row.getString("school_class"),
        response);
  }
}
