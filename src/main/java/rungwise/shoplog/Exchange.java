package rungwise.shoplog;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import rungwise.knowledge.load.Mappers;
import rungwise.question.BrokenText;
import rungwise.question.Problem;
import rungwise.text.Near;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MappingIterator;
import tools.jackson.databind.SequenceWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/** Attempts as files: JSON Lines, whole and exact, or CSV for a spreadsheet. Both come back as they went out. */
public final class Exchange {
    private static final JsonMapper JSON = Mappers.json();
    private static final CsvMapper CSV = CsvMapper.builder().enable(CsvReadFeature.TRIM_SPACES)
            .enable(CsvReadFeature.SKIP_EMPTY_LINES).build();
    /** Fields by name, inner ones after a dot. */
    private static final List<String> COLUMNS = List.of("id", "at", "shop", "bay", "spot", "contaminant", "age",
            "surface", "method", "outcome", "prepared", "minutes", "advised", "notFollowedBecause", "note", "photo",
            "revision", "facts.totalFilmMicrons.min", "facts.totalFilmMicrons.max", "facts.clearMicrons",
            "facts.colour", "facts.paintAgeDays", "facts.vehicleYear", "facts.refinished", "facts.place",
            "facts.priorDamage", "facts.warmestPanelC", "setting.airC", "setting.panelC", "setting.sun",
            "setting.windMs", "setting.humidity", "setting.indoors.volumeM3", "setting.indoors.airChangesPerHour",
            "setting.water.hardnessMgL", "setting.water.alkalinityMgL");
    private static final List<String> LISTS = List.of("surface", "notFollowedBecause", "facts.priorDamage");
    private static final List<String> FREE_TEXT = List.of("note", "photo", "facts.place", "facts.priorDamage");
    /** What a spreadsheet would take for a formula; the sign before it makes it text, and is taken off again. */
    private static final Pattern FORMULA = Pattern.compile("(?s)[=+\\-@'\t].*");
    private static final int PROBLEMS_NAMED = 20;

    private Exchange() {
    }

    /** Writes attempts as JSON Lines. */
    public static Consumer<Attempt> lines(Writer out) {
        return attempt -> {
            try {
                out.write(Shoplog.MAPPER.writeValueAsString(attempt));
                out.write('\n');
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        };
    }

    /** Writes attempts as CSV, a line of column names first. */
    public static Consumer<Attempt> csv(Writer out) {
        CsvSchema.Builder schema = CsvSchema.builder();
        COLUMNS.forEach(schema::addColumn);
        SequenceWriter rows = CSV.writerFor(Map.class).with(schema.build().withHeader()).writeValues(out);
        return attempt -> {
            JsonNode tree = Shoplog.MAPPER.valueToTree(attempt);
            Map<String, String> row = new LinkedHashMap<>();
            for (String column : COLUMNS) {
                row.put(column, cell(column, tree.at("/" + column.replace('.', '/'))));
            }
            rows.write(row);
            rows.flush();
        };
    }

    private static String cell(String column, JsonNode value) {
        List<String> parts = new ArrayList<>();
        if (value.isArray()) {
            value.forEach(v -> parts.add(v.asString()));
        } else if (!value.isMissingNode()) {
            parts.add(value.asString());
        }
        String text = String.join(";", parts);
        return FREE_TEXT.contains(column) && FORMULA.matcher(text).matches() ? "'" + text : text;
    }

    /** Reads JSON Lines; an empty line is nothing. */
    public static Iterator<Attempt> fromLines(Reader in, AttemptReader reader) {
        Iterator<String> lines = new BufferedReader(in).lines().iterator();
        return new Incoming(reader, new Iterator<>() {
            @Override
            public boolean hasNext() {
                return lines.hasNext();
            }

            @Override
            public Optional<JsonNode> next() {
                String line = lines.next().strip();
                return line.isEmpty() ? Optional.empty() : Optional.of(JSON.readTree(line));
            }
        }, 0);
    }

    /** Reads CSV whose first line names the columns, in any order; an empty cell says nothing. */
    public static Iterator<Attempt> fromCsv(Reader in, AttemptReader reader) {
        MappingIterator<Map<String, String>> rows;
        try {
            rows = CSV.readerForMapOf(String.class).with(CsvSchema.emptySchema().withHeader()).readValues(in);
        } catch (JacksonException e) {
            throw new BadAttempt(List.of(unreadable(place("line", 1), e)));
        }
        // the names are read with the first row
        if (rows.hasNextValue() && rows.parser().getSchema() instanceof CsvSchema header) {
            header.forEach(column -> {
                if (!COLUMNS.contains(column.getName().replace("\uFEFF", ""))) {
                    throw new BadAttempt(List.of(Problem.said(place("line", 1), "no-column", "column",
                            column.getName(), "near", Near.among(column.getName(), COLUMNS, Texts.said("near.columns")))));
                }
            });
        }
        return new Incoming(reader, new Iterator<>() {
            @Override
            public boolean hasNext() {
                return rows.hasNextValue();
            }

            @Override
            public Optional<JsonNode> next() {
                return Optional.of(tree(rows.nextValue()));
            }
        }, 1);
    }

    private static JsonNode tree(Map<String, String> row) {
        ObjectNode tree = JSON.createObjectNode();
        row.forEach((name, cell) -> {
            String column = name.replace("\uFEFF", "");
            if (cell == null || cell.isEmpty()) {
                return;
            }
            String text = FREE_TEXT.contains(column) && cell.startsWith("'")
                    && FORMULA.matcher(cell.substring(1)).matches() ? cell.substring(1) : cell;
            String[] path = column.split("\\.");
            ObjectNode at = tree;
            for (int i = 0; i < path.length - 1; i++) {
                at = at.withObjectProperty(path[i]);
            }
            String field = path[path.length - 1];
            if (LISTS.contains(column)) {
                Arrays.stream(text.split(";")).map(String::strip).forEach(at.withArrayProperty(field)::add);
            } else {
                at.put(field, text);
            }
        });
        return tree;
    }

    private static Problem unreadable(String line, JacksonException e) {
        BrokenText broken = BrokenText.of(e);
        return Problem.said(line, "line-unreadable", "said", broken.why(), "remedy", broken.remedy());
    }

    private static String place(String kind, long number) {
        return Texts.said("place." + kind, "number", Long.toString(number));
    }

    /** Goes on after a wrong record to name the next ones too, and throws before it says that it is at the end. */
    private static final class Incoming implements Iterator<Attempt> {
        private final AttemptReader reader;
        private final Iterator<Optional<JsonNode>> records;
        private final List<Problem> problems = new ArrayList<>();
        private Optional<Attempt> next = Optional.empty();
        private long line;

        Incoming(AttemptReader reader, Iterator<Optional<JsonNode>> records, long linesBefore) {
            this.reader = reader;
            this.records = records;
            this.line = linesBefore;
        }

        @Override
        public boolean hasNext() {
            while (next.isEmpty() && more()) {
                line++;
                read();
                if (problems.size() >= PROBLEMS_NAMED) {
                    throw new BadAttempt(problems);
                }
            }
            if (next.isEmpty() && !problems.isEmpty()) {
                throw new BadAttempt(problems);
            }
            return next.isPresent();
        }

        private boolean more() {
            try {
                return records.hasNext();
            } catch (JacksonException e) {
                problems.add(unreadable(place("row", line + 1), e));
                throw new BadAttempt(problems);
            }
        }

        private void read() {
            try {
                next = records.next().map(reader::read);
            } catch (BadAttempt bad) {
                bad.problems().forEach(p -> problems.add(new Problem(place("row", line) + " " + p.pointer(), p.wrong(),
                        p.remedy())));
            } catch (JacksonException e) {
                problems.add(unreadable(place("row", line), e));
            }
        }

        @Override
        public Attempt next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            Attempt one = next.orElseThrow();
            next = Optional.empty();
            return one;
        }
    }
}
