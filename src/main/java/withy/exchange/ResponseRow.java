package withy.exchange;

import static withy.exchange.ResponseColumn.ANSWERED_AT;
import static withy.exchange.ResponseColumn.ASSIGNMENT;
import static withy.exchange.ResponseColumn.CONCEPTS;
import static withy.exchange.ResponseColumn.CORRECT;
import static withy.exchange.ResponseColumn.FORM;
import static withy.exchange.ResponseColumn.ITEM;
import static withy.exchange.ResponseColumn.KEY;
import static withy.exchange.ResponseColumn.LEARNER;
import static withy.exchange.ResponseColumn.MISCONCEPTION;
import static withy.exchange.ResponseColumn.OFFERED;
import static withy.exchange.ResponseColumn.OPTION;
import static withy.exchange.ResponseColumn.PRACTICE;
import static withy.exchange.ResponseColumn.RAPID;
import static withy.exchange.ResponseColumn.SHOWN_MS;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import withy.core.response.InvalidResponse;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/** Reads rows of one file; cells that come again and again are kept once. */
final class ResponseRow {
  private static final int KEPT = 10_000;

  private final int[] places;
  private final int width;
  private final Map<String, String> words = new LinkedHashMap<>();
  private final Map<String, List<String>> concepts = new LinkedHashMap<>();
  private final Map<String, List<OfferedOption>> choices = new LinkedHashMap<>();

  private ResponseRow(int[] places, int width) {
    this.places = places;
    this.width = width;
  }

  /** The reader of the rows below a header. */
  static ResponseRow below(CSVRecord header) throws MalformedResponses {
    List<String> titles = header.stream().map(String::strip).toList();
    int[] places = new int[ResponseColumn.values().length];
    for (ResponseColumn column : ResponseColumn.values()) {
      int place = titles.indexOf(column.title());
      if (place < 0 && !column.mayBeMissing()) {
        throw new MalformedResponses(1, column.title(), "missing-column", column.title());
      }
      if (place != titles.lastIndexOf(column.title())) {
        throw new MalformedResponses(1, column.title(), "column-twice", column.title());
      }
      places[column.ordinal()] = place;
    }
    return new ResponseRow(places, titles.size());
  }

  Response read(CSVRecord row) throws MalformedResponses {
    if (row.size() != width) {
      String cells = row.size() + "/" + width;
      throw new MalformedResponses(row.getRecordNumber(), null, "cells", cells);
    }
    try {
      return response(row);
    } catch (InvalidResponse e) {
      String problem = e.flaw().name().toLowerCase(Locale.ROOT).replace('_', '-');
      throw malformed(row, ResponseColumn.of(e.flaw()), problem, e.text());
    }
  }

  private Response response(CSVRecord row) throws MalformedResponses {
    return new Response(
        word(row, LEARNER),
        word(row, ASSIGNMENT),
        text(row, ITEM),
        word(row, FORM),
        word(row, PRACTICE),
        concepts.computeIfAbsent(word(row, CONCEPTS), ResponseRow::split),
        word(row, KEY),
        wordOrNull(row, OPTION),
        wordOrNull(row, MISCONCEPTION),
        offered(row),
        truth(row, CORRECT),
        shownMillis(row),
        answeredAt(row),
        places[RAPID.ordinal()] >= 0 && truth(row, RAPID));
  }

  private String cell(CSVRecord row, ResponseColumn column) {
    return row.get(places[column.ordinal()]);
  }

  private String text(CSVRecord row, ResponseColumn column) {
    return FormulaGuard.take(cell(row, column));
  }

  private String word(CSVRecord row, ResponseColumn column) {
    String text = text(row, column);
    return words.size() < KEPT
        ? words.computeIfAbsent(text, t -> t)
        : words.getOrDefault(text, text);
  }

  private @Nullable String wordOrNull(CSVRecord row, ResponseColumn column) {
    String word = word(row, column);
    return word.isEmpty() ? null : word;
  }

  private List<OfferedOption> offered(CSVRecord row) throws MalformedResponses {
    String cell = text(row, OFFERED);
    List<OfferedOption> known = choices.get(cell);
    if (known != null) {
      return known;
    }
    List<OfferedOption> offered = new ArrayList<>();
    for (String each : split(cell)) {
      offered.add(option(row, each));
    }
    if (choices.size() < KEPT) {
      choices.put(cell, List.copyOf(offered));
    }
    return offered;
  }

  private static OfferedOption option(CSVRecord row, String pair) throws MalformedResponses {
    int equals = pair.indexOf('=');
    if (equals < 0) {
      throw malformed(row, OFFERED, "malformed-option", pair);
    }
    String misconception = pair.substring(equals + 1);
    return new OfferedOption(
        pair.substring(0, equals), misconception.isEmpty() ? null : misconception);
  }

  private static List<String> split(String cell) {
    List<String> parts = new ArrayList<>();
    for (String part : cell.split(" ", -1)) {
      if (!part.isEmpty()) {
        parts.add(part);
      }
    }
    return List.copyOf(parts);
  }

  private boolean truth(CSVRecord row, ResponseColumn column) throws MalformedResponses {
    String cell = cell(row, column);
    if (cell.equalsIgnoreCase("true") || cell.equalsIgnoreCase("false")) {
      return Boolean.parseBoolean(cell);
    }
    throw malformed(row, column, "no-truth-value", cell);
  }

  private long shownMillis(CSVRecord row) throws MalformedResponses {
    String cell = cell(row, SHOWN_MS);
    try {
      return Long.parseLong(cell);
    } catch (NumberFormatException e) {
      throw malformed(row, SHOWN_MS, "no-whole-number", cell);
    }
  }

  private Instant answeredAt(CSVRecord row) throws MalformedResponses {
    String cell = cell(row, ANSWERED_AT);
    try {
      // Universal time, as it is written here, is read three times as fast by its own parser.
      return cell.endsWith("Z") ? Instant.parse(cell) : OffsetDateTime.parse(cell).toInstant();
    } catch (DateTimeException e) {
      throw malformed(row, ANSWERED_AT, "no-time", cell);
    }
  }

  private static MalformedResponses malformed(
      CSVRecord row, ResponseColumn column, String problem, String text) {
    return new MalformedResponses(row.getRecordNumber(), column.title(), problem, text);
  }
}
