// SPDX-License-Identifier: Apache-2.0
package spadework.office.crew;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import spadework.draft.FieldKind;
import spadework.draft.FileSchema;
import spadework.draft.SchemaField;
import spadework.draft.TypedValue;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.paperwork.crew.LogPart;
import spadework.paperwork.crew.LogRow;
import spadework.wording.Language;
import spadework.wording.Wording;

/**
 * The crew's log as a table that any spreadsheet opens (RFC 4180): a row for each thing to write down, by the key that
 * it has below {@code asBuilt}. What is left blank says nothing.
 */
final class CrewLogFile {
    private static final Wording WORDS = Wording.beside(CrewLogFile.class);
    private static final List<String> COLUMNS = List.of("key", "where", "what", "planned", "found");
    private static final int MOST_ROWS = 5000;

    private CrewLogFile() {}

    /** What a filled log says. */
    record Filled(Map<String, String> values, List<Fault> faults) {}

    /** The blank log. */
    static byte[] blank(List<LogPart> parts, Language language) {
        StringBuilder text = new StringBuilder(line(COLUMNS.stream()
                .map(column -> WORDS.in(language).get("column." + column))
                .toList()));
        for (LogPart part : parts) {
            for (LogRow row : part.rows()) {
                text.append(line(List.of(row.key(), part.title(), row.what(), row.planned(), "")));
            }
        }
        // A mark at the start, by which spreadsheets know that the letters are UTF-8.
        return ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
    }

    private static String line(List<String> cells) {
        return CSVFormat.RFC4180.format(cells.toArray()) + "\r\n";
    }

    /**
     * What was filled in, in the full form of a job file, with every fault of the table.
     *
     * @param file for the faults
     * @param known the keys of this job's blank log
     */
    static Filled read(String file, String text, Set<String> known) throws IOException {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter(plain))
                .setHeader()
                .setSkipHeaderRecord(true)
                .setIgnoreEmptyLines(true)
                .setIgnoreHeaderCase(true)
                .setTrim(true)
                .get();
        Map<String, String> values = new LinkedHashMap<>();
        List<Fault> faults = new ArrayList<>();
        try (CSVParser rows = format.parse(new StringReader(plain))) {
            Optional<String> key = column(rows, "key");
            Optional<String> found = column(rows, "found");
            if (key.isEmpty() || found.isEmpty()) {
                faults.add(fault(file, "columns", String.join(", ", rows.getHeaderNames()), "columns"));
                return new Filled(values, faults);
            }
            for (CSVRecord row : rows) {
                read(file, new Row(row, key.get(), found.get()), known, values, faults);
                if (row.getRecordNumber() > MOST_ROWS) {
                    faults.add(fault(file, "row " + MOST_ROWS, "more rows", "rows"));
                    break;
                }
            }
        } catch (UncheckedIOException | IllegalArgumentException | IllegalStateException spoiled) {
            faults.add(fault(file, "table", spoiled.getMessage(), "table"));
        }
        return new Filled(values, faults);
    }

    private static void read(String file, Row row, Set<String> known, Map<String, String> values, List<Fault> faults) {
        String key = row.key();
        String found = row.found();
        if (found.isEmpty()) {
            return;
        }
        String place = "row " + (row.record().getRecordNumber() + 1);
        if (!known.contains(key) && !isAnotherDay(key)) {
            faults.add(fault(file, place, "key \"" + key + "\"", "key"));
        } else if (values.containsKey(key)) {
            faults.add(fault(file, place, "key \"" + key + "\" once more", "twice"));
        } else {
            values.put(key, inFull(key, found));
        }
    }

    /** The name that a column has in this table, whichever language it was printed in. */
    private static Optional<String> column(CSVParser rows, String column) {
        return Language.all().stream()
                .map(language -> WORDS.in(language).get("column." + column))
                .flatMap(name -> rows.getHeaderNames().stream().filter(name::equalsIgnoreCase))
                .findFirst();
    }

    /** A row, by the names of its two columns that count. */
    private record Row(CSVRecord record, String keyColumn, String foundColumn) {
        String key() {
            return record.isSet(keyColumn) ? record.get(keyColumn) : "";
        }

        String found() {
            return record.isSet(foundColumn) ? record.get(foundColumn) : "";
        }
    }

    /** A look at the trench on a day that the plan did not have. */
    private static boolean isAnotherDay(String key) {
        return key.matches("inspections/\\d{4}-\\d{2}-\\d{2}/(by|soil|hazards|done)");
    }

    /** A semicolon where the spreadsheet of another country put one. */
    private static String delimiter(String text) {
        String head = text.lines().findFirst().orElse("");
        return head.contains(";") && !head.contains(",") ? ";" : ",";
    }

    private static String inFull(String key, String found) {
        if (key.endsWith("/wet")) {
            return String.join(
                    ", ",
                    List.of(found.strip().split("[\\s,;]+(?=[\\d.])")).stream()
                            .map(reading -> reading.matches("[\\d.]+") ? reading + " mil" : reading)
                            .toList());
        }
        SchemaField spot = FileSchema.job().at("/asBuilt/" + rowed(key)).orElseThrow();
        boolean yes = spot.kind() == FieldKind.YES_OR_NO && found.strip().matches("(?i)s[ií]");
        String full = TypedValue.inFull(spot, yes ? "yes" : found);
        if (spot.kind() == FieldKind.QUANTITY && full.matches("[\\d.]+")) {
            return full + (key.endsWith("/gallons") ? " gal" : " ton");
        }
        return full;
    }

    /** A key with the rows of its lists by number, as the format names a place. */
    private static String rowed(String key) {
        return key.replaceFirst("^(walls|pipes|flowTests|inspections)/[^/]+", "$1/0")
                .replaceFirst("/(holdPoints|coats)/[^/]+", "/$1/0");
    }

    private static Fault fault(String file, String place, String found, String kind) {
        return new Fault(
                Place.ofFile(file + ", " + place), found, WORDS.get("allowed." + kind), WORDS.get("fix." + kind));
    }
}
