// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import spadework.office.Bid;

/** Jobs by seed: a sample whose walls, water and ground are changed at random, read and priced as its file would be. */
public final class GeneratedBids {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final List<Path> FROM = List.of(
            Path.of("sample-quotes/block-basement-to-swale"),
            Path.of("sample-quotes/poured-basement-with-sump"),
            Path.of("sample-quotes/stone-wall-engineer-first"),
            Path.of("sample-quotes/crawl-space-between-houses"));

    private GeneratedBids() {}

    /** So many bids; a job that cannot be read is a fault of the generator and fails here. */
    public static List<Bid> of(int count) {
        List<Bid> bids = new ArrayList<>();
        for (int seed = 0; seed < count; seed++) {
            bids.add(bid(seed));
        }
        return bids;
    }

    /** All samples that are printed and so many bids by seed, by their names. */
    public static List<Named<Bid>> withSamples(int count) {
        List<Bid> generated = of(count);
        return Stream.concat(
                        Samples.papered().stream()
                                .map(folder -> Named.of(folder.getFileName().toString(), Samples.bid(folder))),
                        IntStream.range(0, count).mapToObj(i -> Named.of("seed " + i, generated.get(i))))
                .toList();
    }

    private static Bid bid(int seed) {
        try {
            return (Bid) Samples.office()
                    .bid(JSON.writeValueAsString(job(seed)), from(seed).resolve("job.json"));
        } catch (ClassCastException refused) {
            throw new IllegalStateException("seed " + seed + " of " + from(seed), refused);
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** The sample that a seed starts from. */
    static Path from(int seed) {
        return FROM.get(seed % FROM.size());
    }

    /** The job of a seed, as its file would say it. */
    static ObjectNode job(int seed) {
        try {
            ObjectNode job =
                    (ObjectNode) JSON.readTree(Files.readString(from(seed).resolve("job.json")));
            change(job, new Random(seed));
            return job;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static void change(ObjectNode job, Random random) {
        for (JsonNode wall : job.withArray("walls")) {
            wall((ObjectNode) wall, random);
        }
        if (job.get("restoration") instanceof ObjectNode after) {
            int[] counts = {0, 1, 2, 12};
            after.put("plants", counts[random.nextInt(counts.length)]);
            after.put("concrete", random.nextInt(3) == 0 ? "60 sf" : "0 sf");
            after.put("sod", random.nextInt(4) == 0 ? "150 sf" : "0 sf");
        }
        object(job, "schedule").put("workingDays", 1 + random.nextInt(30));
        if (random.nextInt(4) == 0) {
            object(job, "site").remove("locateTicket");
        }
        if (random.nextInt(3) == 0) {
            item(job, random);
        }
    }

    private static void wall(ObjectNode wall, Random random) {
        double depth = 2.5 + random.nextInt(40) / 10.0;
        wall.putObject("depth").put("start", depth + " ft").put("end", depth + random.nextInt(3) * 0.5 + " ft");
        ObjectNode digging = object(wall, "digging");
        if (random.nextInt(4) == 0) {
            digging.put("access", "hand");
        }
        if (random.nextInt(3) == 0) {
            digging.put("protection", "shielded");
        }
        ObjectNode condition = object(wall, "condition");
        switch (random.nextInt(3)) {
            case 0 -> condition.remove("tiedToFloor");
            case 1 -> condition.put("tiedToFloor", false);
            default -> condition.put("tiedToFloor", true);
        }
        condition.put("cracks", random.nextInt(2) == 0 ? "0 ft" : random.nextInt(30) + " ft");
        if (!wall.get("kind").asText().equals("stone")) {
            ObjectNode finish = object(wall, "finish");
            switch (random.nextInt(3)) {
                case 0 -> {
                    finish.removeAll();
                    finish.put("system", "sheet");
                }
                case 1 -> {
                    finish.removeAll();
                    finish.put("system", "parge");
                }
                default -> {
                    /* as the sample has it */
                }
            }
        }
        wall.put("windowWells", random.nextInt(3));
    }

    /** The object under a key; a sample may write a word there, which says what is usual. */
    private static ObjectNode object(ObjectNode in, String key) {
        return in.get(key) instanceof ObjectNode some ? some : in.putObject(key);
    }

    private static void item(ObjectNode job, Random random) {
        String[] codes = {"SILT-FENCE", "ENG-VISIT", "TREE-CARE", "PIPE-CAMERA", "FENCE-OUT", "LEAD-SAFE", "VAC-LOCATE"
        };
        String code = codes[random.nextInt(codes.length)];
        boolean feet = code.equals("SILT-FENCE") || code.equals("PIPE-CAMERA") || code.equals("FENCE-OUT");
        ArrayNode items = job.get("items") instanceof ArrayNode some ? some : job.putArray("items");
        items.addObject()
                .put("code", code)
                .put("quantity", (1 + random.nextInt(20)) + (feet ? " ft" : " ea"))
                .put("section", random.nextBoolean() ? "setup" : "ground")
                .put("reason", "Asked for on the visit");
    }
}
