// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.press.PageText;
import spadework.press.PrintedType;

/**
 * A proposal is four pages, five at most with photos, a contract eight with its notices, a certificate a leaf, a
 * scope of work a cover, a page for each wall, one for pipes and ground and the drawings: for a house with one wall
 * to do and for one with twelve, with names and places as long as people write them.
 */
class HousesOfEverySizeTest {
    private static final Path SAMPLE = Path.of("sample-quotes/block-basement-to-swale");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> FACES = List.of("north", "east", "south", "west");

    private static final String SIGNING = """
            {"on": "2026-08-14", "place": "home", "salesperson": {"name": "Tamsin Orlebar"}, "oldestAge": 60,
             "specialOrder": "$0.00", "subcontractors": [], "dateIsEssential": false,
             "permits": "We pull the permit before we dig; its fee is in the price.",
             "lienOnHome": false, "financed": false}
            """;

    @TempDir
    Path root;

    @ParameterizedTest(name = "{0} walls, {1} photos, names of {2} letters: proposal of {3} pages, contract of {4}")
    @CsvSource(textBlock = """
            1,   0,  0, 4, 8
            2,   0,  0, 4, 8
            6,   0,  0, 4, 8
            12,  0,  0, 4, 8
            1,  10,  0, 5, 8
            2,  10,  0, 5, 8
            6,  10,  0, 5, 8
            12, 10,  0, 5, 8
            2,   0, 60, 4, 8
            12, 10, 60, 5, 8
            """)
    void papersKeepTheirLength(int walls, int photos, int letters, int most, int mostOfContract) throws IOException {
        Outcome outcome = printed(walls, photos, letters);
        proposal(outcome, walls, photos, letters, most);
        contract(outcome, letters, mostOfContract);
        scope(outcome, walls);
        assertThat(pages(outcome, "warranty.pdf")).as("a certificate is a leaf").hasSize(2);
    }

    private static void proposal(Outcome outcome, int walls, int photos, int letters, int most) throws IOException {
        List<String> pages = pages(outcome, "proposal.pdf");
        assertThat(pages).hasSizeLessThanOrEqualTo(most);
        assertThat(pages.get(0))
                .contains("What is wrong", "What we will do", "What it costs", "When", "If it leaks again");
        String all = String.join(" ", pages);
        assertThat(all).contains("Wall " + (char) ('A' + walls - 1));
        if (photos > 0) {
            assertThat(all).contains("Photo " + photos + ":");
        }
        assertThat(pages.get(pages.size() - 1)).contains("Your yes");
        if (letters > 0) {
            assertThat(all.replace(" ", "")).contains(name(letters, "Ida").replace(" ", ""));
        }
        // Only the page of the signatures may be emptier than a third.
        assertThat(pages.subList(0, pages.size() - 1)).allMatch(page -> words(page) > 110);
    }

    private static void contract(Outcome outcome, int letters, int most) throws IOException {
        List<String> pages = pages(outcome, "contract.pdf");
        assertThat(pages).hasSizeLessThanOrEqualTo(most);
        assertThat(pages.get(0)).contains("In short", "Contract price", "Payments");
        if (letters > 0) {
            assertThat(String.join("", pages).replace(" ", ""))
                    .contains(
                            name(letters, "Ida").replace(" ", ""),
                            name(letters, "Tobias").replace(" ", ""));
        }
        // Only the page of the signatures may be emptier than a third.
        assertThat(pages).allMatch(page -> words(page) > 110 || page.contains("Right to cancel, and signatures"));
    }

    private static void scope(Outcome outcome, int walls) throws IOException {
        List<String> pages = pages(outcome, "scope-of-work.pdf");
        // Walls are alike, so one section of them, two of pipes and three profiles are drawn, two on a page; the
        // plan of many walls has a page of its own.
        int first = walls > 8 ? 2 : 1;
        assertThat(pages).hasSizeLessThanOrEqualTo(first + walls + 1 + 3);
        assertThat(pages.subList(first, first + walls))
                .allMatch(page -> page.contains("Hold point 1.") && page.contains("Hold point 2."));
    }

    private static long words(String page) {
        return Arrays.stream(page.split(" "))
                .filter(word -> word.matches(".*[A-Za-z].*"))
                .count();
    }

    private Outcome printed(int walls, int photos, int letters) throws IOException {
        for (String name : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(SAMPLE.resolveSibling(name), root.resolve(name));
        }
        Path folder = Files.createDirectory(root.resolve("job"));
        ObjectNode job = (ObjectNode) JSON.readTree(Files.readString(SAMPLE.resolve("job.json")));
        walls(job, walls, letters);
        photos(job, folder, photos);
        if (letters > 0) {
            ((ObjectNode) job.get("customer"))
                    .putArray("names")
                    .add(name(letters, "Ida"))
                    .add(name(letters, "Tobias"));
        }
        job.set("signing", JSON.readTree(SIGNING));
        Files.writeString(folder.resolve("job.json"), job.toString());
        Outcome outcome = Samples.office()
                .documents(
                        folder,
                        root.resolve("out"),
                        EnumSet.of(PaperKind.PROPOSAL, PaperKind.SCOPE, PaperKind.CONTRACT, PaperKind.WARRANTY));
        assertThat(outcome).as(outcome.toString()).isInstanceOf(Outcome.Printed.class);
        return outcome;
    }

    private static List<String> pages(Outcome outcome, String name) throws IOException {
        byte[] printed = pdf(outcome, name);
        assertThat(PrintedType.of(printed).least())
                .as("smallest letter of %s, the plan's among them, in points", name)
                .isGreaterThanOrEqualTo(7 - PrintedType.HAIR);
        return PageText.pages(printed);
    }

    private static byte[] pdf(Outcome outcome, String name) throws IOException {
        return Files.readAllBytes(((Outcome.Printed) outcome)
                .files().stream()
                        .filter(file -> file.endsWith(name))
                        .findFirst()
                        .orElseThrow());
    }

    /** A house of 42 by 28 ft whose walls are done face by face, in stretches as long as each other. */
    private static void walls(ObjectNode job, int count, int letters) {
        JsonNode model = job.get("walls").get(0);
        ArrayNode walls = job.putArray("walls");
        int stretches = (count + 3) / 4;
        for (int i = 0; i < count; i++) {
            int face = i / stretches;
            int feet = (face % 2 == 0 ? 42 : 28) / stretches;
            ObjectNode wall = model.deepCopy();
            wall.remove("openings");
            wall.put("label", String.valueOf((char) ('A' + i)))
                    .put("where", letters > 0 ? name(letters, "behind the") : FACES.get(face) + " side")
                    .put("faces", FACES.get(face))
                    .put("from", i % stretches * feet + " ft")
                    .put("length", feet + " ft");
            walls.add(wall);
        }
        job.remove("corners");
        ObjectNode drain = (ObjectNode) job.at("/water/drains/0");
        drain.putArray("along").add("A");
        for (JsonNode item : job.withArray("items")) {
            if (item.get("section").asText().length() == 1) {
                ((ObjectNode) item).put("section", "A");
            }
        }
        ((ArrayNode) job.at("/site/limits")).forEach(limit -> ((ObjectNode) limit).put("wall", "A"));
        ((ObjectNode) job.get("schedule")).put("workingDays", 90).put("latestFinish", "2027-03-02");
    }

    private static void photos(ObjectNode job, Path folder, int count) throws IOException {
        ArrayNode photos = job.putArray("photos");
        for (JsonNode seen : job.get("observations")) {
            ((ObjectNode) seen).putArray("photos");
        }
        for (int i = 0; i < count; i++) {
            String file = "photo-" + (i + 1) + ".jpg";
            Files.copy(SAMPLE.resolve(i % 2 == 0 ? "wet-joint.jpg" : "test-pit.jpg"), folder.resolve(file));
            photos.addObject().put("file", file).put("caption", "Wet joint at the back wall, seen from the stairs");
            ((ArrayNode) job.at("/observations/" + i % 3 + "/photos")).add(file);
        }
    }

    private static String name(int letters, String start) {
        return (start + " Wrenfield of the long lane behind the old mill at the creek bend")
                .substring(0, letters)
                .strip();
    }
}
