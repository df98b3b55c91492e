// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A change of the book is dated, has its reason, and loses nothing. */
class BookDraftTest {
    private static final LocalDate AUGUST = LocalDate.of(2026, 8, 1);
    private static final LocalDate MAY = LocalDate.of(2027, 5, 1);

    private static final String TEXT = """
            {
              "startsFrom": "default",
              "title": "Own book",
              "dated": "2026-02-02",
              "items": [
                {
                  "code": "STONE",
                  "unit": "cy",
                  "material": { "cost": "$31.50", "sold": "ton" },
                  "labor": { "crew": "dig crew", "perHour": "5 cy", "slowedBy": ["deep", "narrow"] },
                  "strange": { "kept": true }
                }
              ],
              "truckCubicYards": "10 cy"
            }
            """;

    private static BookDraft book() {
        return BookDraft.read(TEXT).orElseThrow();
    }

    @Test
    void changeKeepsTheOldValueWithDayAndReason() {
        BookDraft changed = book().changed("STONE", Map.of("material/cost", "$33.00"), AUGUST, "August list");
        assertThat(changed.text())
                .isEqualTo(TEXT.replace("\"$31.50\"", "\"$33.00\"")
                        .replace("2026-02-02", "2026-08-01")
                        .replace("\"strange\": { \"kept\": true }\n", """
                        "strange": { "kept": true },
                              "history": [
                                {
                                  "on": "2026-08-01",
                                  "reason": "August list",
                                  "changes": [
                                    { "what": "material/cost", "from": "$31.50", "to": "$33.00" }
                                  ]
                                }
                              ]
                        """));
    }

    @Test
    void bookOfAnEarlierDayIsTheBookAsItStood() {
        BookDraft twice = book().changed("STONE", Map.of("material/cost", "$33.00"), AUGUST, "August list")
                .changed("STONE", Map.of("labor/machine", "skid steer", "labor/slowedBy/1", ""), MAY, "new machine");
        assertThat(twice.asOf(AUGUST.minusDays(1)).item("STONE")).isEqualTo(book().item("STONE"));
        assertThat(twice.asOf(AUGUST).draft().shown("/items/0/material/cost")).isEqualTo("$33.00");
        assertThat(twice.asOf(AUGUST).draft().shown("/items/0/labor/machine")).isEmpty();
        assertThat(twice.asOf(MAY)).isEqualTo(twice);
    }

    @Test
    void itemThatWasAddedLaterIsNotInTheBookOfBefore() {
        BookDraft added = book().added(book().item("STONE").orElseThrow().without("strange"), MAY, "new");
        assertThat(added.draft().rows("/items")).isEqualTo(2);
        assertThat(added.asOf(MAY.minusDays(1)).draft().root().values().get("items"))
                .isEqualTo(book().draft().root().values().get("items"));
    }

    @Test
    void retiredItemStaysWithDayAndReason() {
        BookDraft retired = book().retired("STONE", MAY, "not sold any more");
        assertThat(retired.draft().shown("/items/0/retired/on")).isEqualTo("2027-05-01");
        assertThat(retired.draft().shown("/items/0/retired/reason")).isEqualTo("not sold any more");
        assertThat(retired.asOf(AUGUST).item("STONE")).isEqualTo(book().item("STONE"));
    }

    @Test
    void whatDoesNotChangeLeavesNoTrace() {
        assertThat(book().changed("STONE", Map.of("material/cost", "$31.50"), AUGUST, "the same"))
                .isEqualTo(book());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyEarlierBookComesBackAfterAnyChanges(long seed) {
        Random random = new Random(seed);
        List<String> places = List.of(
                "material/cost",
                "material/sold",
                "labor/perHour",
                "labor/machine",
                "goodUntil",
                "source/text",
                "film/coats",
                "standard",
                "subcontract",
                "strange/kept");
        List<BookDraft> books = new ArrayList<>(List.of(book()));
        for (int day = 1; day <= 40; day++) {
            String value = random.nextInt(4) == 0
                    ? ""
                    : List.of("true", "7", "$9.99", "two words").get(random.nextInt(4));
            BookDraft now = books.get(books.size() - 1);
            books.add(now.changed(
                    "STONE",
                    Map.of(places.get(random.nextInt(places.size())), value),
                    AUGUST.plusDays(day),
                    "change " + day));
        }
        BookDraft last = books.get(books.size() - 1);
        for (int day = 0; day <= 40; day++) {
            Map<String, String> then = Leaves.of(books.get(day).item("STONE").orElseThrow());
            assertThat(Leaves.of(last.asOf(AUGUST.plusDays(day)).item("STONE").orElseThrow()))
                    .as("day " + day)
                    .containsExactlyInAnyOrderEntriesOf(then);
        }
    }
}
