// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Random;
import spadework.office.Bid;

/**
 * Lives of jobs by seed: a generated job that may offer options, be signed with some of them, be changed by orders that
 * are accepted or declined, and be built a little otherwise than agreed.
 */
public final class GeneratedLifeCycles {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private GeneratedLifeCycles() {}

    /** The bid of that seed. */
    public static Bid of(int seed) {
        ObjectNode job = GeneratedBids.job(seed);
        live(job, new Random(seed * 31L + 7));
        try {
            String text = JSON.writeValueAsString(job);
            if (!(Samples.office().bid(text, GeneratedBids.from(seed).resolve("job.json")) instanceof Bid bid)) {
                throw new IllegalStateException("seed " + seed + ": "
                        + Samples.office().bid(text, GeneratedBids.from(seed).resolve("job.json")));
            }
            return bid;
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static void live(ObjectNode job, Random random) {
        if (random.nextInt(3) > 0) {
            options(job, random);
        }
        if (random.nextInt(4) == 0) {
            return;
        }
        sign(job, random);
        if (random.nextInt(3) > 0) {
            changes(job, random);
        }
        if (random.nextInt(3) > 0) {
            build(job, random);
        }
    }

    private static void options(ObjectNode job, Random random) {
        ArrayNode options = job.putArray("options");
        options.add(tree("""
                {"label": "OP1", "title": "Sod and not seed", "why": "Green at once",
                 "adds": {"restoration": {"sod": "%d sf"}}}
                """.formatted(100 + random.nextInt(10) * 20)));
        JsonNode wall = job.get("walls").get(0);
        if (!wall.get("kind").asText().equals("stone")) {
            options.add(tree("""
                    {"label": "OP2", "title": "Thicker coating", "why": "It bridges wider cracks",
                     "adds": {"finishes": [{"wall": "%s", "finish": {"system": "coating", "dryFilm": "%d mil"}}]}}
                    """.formatted(wall.get("label").asText(), 70 + random.nextInt(3) * 10)));
        }
    }

    private static void sign(ObjectNode job, Random random) {
        String day = job.get("issued").asText();
        String name = job.at("/customer/names/0").asText();
        job.set("signing", tree("""
                {"on": "%s", "place": "home", "oldestAge": 58, "specialOrder": "$0.00", "subcontractors": [],
                 "dateIsEssential": false, "salesperson": {"name": "Jory Fennimarsh"}, "permits": "We pull it."}
                """.formatted(day)));
        ObjectNode accepted = (ObjectNode) tree("""
                {"revision": 1, "on": "%s", "by": ["%s"], "price": "$30,000.00", "bookDate": "2026-01-01",
                 "templates": "a1", "signature": {"typed": "%s", "consent": "Read it on paper"}}
                """.formatted(day, name, name));
        ArrayNode taken = accepted.putArray("options");
        ArrayNode declined = accepted.putArray("declined");
        for (JsonNode option : job.path("options")) {
            (random.nextBoolean() ? taken : declined).add(option.get("label"));
        }
        job.set("accepted", accepted);
    }

    private static void changes(ObjectNode job, Random random) {
        ArrayNode changes = job.putArray("changes");
        int count = 1 + random.nextInt(3);
        for (int number = 1; number <= count; number++) {
            boolean declined = random.nextInt(4) == 0;
            ObjectNode change = (ObjectNode) tree("""
                    {"number": %d, "title": "More to seed", "issued": "%s", "reason": "work asked for",
                     "why": "You asked for it", "evidence": "Walked on site", "days": %d,
                     "state": "%s", "adds": {"restoration": {"seed": "%d sf", "plants": %d}},
                     "decision": {"on": "%s", "by": ["%s"], "price": "$%d.00",
                       "signature": {"typed": "%s", "consent": "Read it on paper"}}}
                    """.formatted(
                            number,
                            job.get("issued").asText(),
                            random.nextInt(4),
                            declined ? "declined" : "accepted",
                            100 + random.nextInt(9) * 50,
                            random.nextInt(3),
                            job.get("issued").asText(),
                            job.at("/customer/names/0").asText(),
                            200 + random.nextInt(900),
                            job.at("/customer/names/0").asText()));
            if (declined) {
                change.remove("decision");
            }
            if (!declined && random.nextBoolean()) {
                change.remove("adds");
                change.set(
                        "unitPrices",
                        tree("[{\"price\": \"U-ROCK\", \"quantity\": \"%d.5 cy\"}]".formatted(1 + random.nextInt(4))));
            }
            changes.add(change);
        }
    }

    private static void build(ObjectNode job, Random random) {
        String day = job.at("/schedule/earliestStart").asText();
        ObjectNode built = job.putObject("asBuilt").put("started", day).put("finished", day);
        ArrayNode walls = built.putArray("walls");
        for (JsonNode wall : job.get("walls")) {
            walls.add(tree("""
                    {"label": "%s", "length": "%d ft 6 in", "depthStart": "%d ft", "depthEnd": "5 ft",
                     "gallons": "%d.5 gal", "batches": ["L-1"],
                     "holdPoints": [{"point": "1, bare wall", "on": "%s", "by": "The owner", "waived": "seen"}]}
                    """.formatted(
                            wall.get("label").asText(),
                            10 + random.nextInt(30),
                            4 + random.nextInt(3),
                            3 + random.nextInt(20),
                            day)));
        }
        ArrayNode pipes = built.putArray("pipes");
        for (String kind : new String[] {"drains", "mains", "roofLines"}) {
            for (JsonNode run : job.path("water").path(kind)) {
                if (random.nextInt(4) > 0) {
                    pipes.add(tree("{\"label\": \"%s\", \"length\": \"%d ft\"}"
                            .formatted(run.get("label").asText(), 20 + random.nextInt(70))));
                }
            }
        }
        if (random.nextBoolean()) {
            built.put("stone", 8 + random.nextInt(12) + " ton").put("loads", random.nextInt(5));
        }
        ArrayNode received = job.putArray("received");
        for (int i = random.nextInt(3); i >= 0; i--) {
            received.add(tree("{\"on\": \"%s\", \"amount\": \"$%d.00\", \"how\": \"check %d\"}"
                    .formatted(day, 1000 + random.nextInt(9000), i + 1)));
        }
    }

    private static JsonNode tree(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException(text, broken);
        }
    }
}
