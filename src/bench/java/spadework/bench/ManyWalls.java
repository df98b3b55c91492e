// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a wall costs as walls grow many: the whole set of papers of a row of bump-outs with 10, 50 and 100 walls, each
 * in a process of its own that is given 512 MB of heap, a check of 100, 200 and 400 walls, and price and check of the
 * same warm. A wall of 100 may cost
 * twice what a wall of 10 costs, start of the program included; the run fails where it costs more.
 */
final class ManyWalls {
    private static final Path WORK = Path.of("target", "many-walls").toAbsolutePath();
    private static final Path SAMPLES = Path.of("sample-quotes");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final double MOST = 2;

    /** Lengths of one bump-out in feet, the corner after each and the side it faces. */
    private static final List<Stretch> BUMP = List.of(
            new Stretch(20, "inside", "north"),
            new Stretch(3, "outside", "west"),
            new Stretch(6, "outside", "north"),
            new Stretch(3, "inside", "east"));

    private record Stretch(double feet, String corner, String faces) {}

    private ManyWalls() {}

    /** Argument: how often each program runs (default 3); the least work of the processor counts. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int turns = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 3;
        Files.createDirectories(WORK);
        for (String above : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            Files.write(WORK.resolve(above), Files.readAllBytes(SAMPLES.resolve(above)));
        }
        double few = 0;
        double last = 0;
        for (int walls : new int[] {10, 50, 100}) {
            FreshProcess run = least(turns, "documents", job(walls), "--out", WORK.resolve("out-" + walls));
            last = run.cpuSeconds() / walls;
            few = walls == 10 ? last : few;
            say("documents", walls, run);
        }
        for (int walls : new int[] {100, 200, 400}) {
            say("check", walls, least(turns, "check", job(walls)));
        }
        Map<String, Path> jobs = new LinkedHashMap<>();
        jobs.put("sample 1", SAMPLES.resolve("block-basement-to-swale"));
        for (int walls : new int[] {10, 100, 200, 400}) {
            jobs.put(walls + " walls", job(walls));
        }
        WarmWalls.compare(jobs, 21);
        System.out.println(String.format(Locale.ROOT, "a wall of 100 : a wall of 10 = %.2f", last / few));
        if (last > MOST * few) {
            throw new IllegalStateException("a wall of 100 costs more than twice a wall of 10");
        }
    }

    private static void say(String command, int walls, FreshProcess run) {
        System.out.println(String.format(
                Locale.ROOT,
                "%-10s %4d walls %7.2f s %7.2f cpu s %6.0f cpu ms a wall %5.0f MB",
                command,
                walls,
                run.seconds(),
                run.cpuSeconds(),
                run.cpuSeconds() / walls * 1000,
                run.peakMegabytes()));
    }

    private static FreshProcess least(int turns, String command, Path job, Object... more)
            throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(
                "java", "-Xmx512m", "-XX:+UseSerialGC", "-jar", "target/spadework.jar", command, job.toString()));
        for (Object word : more) {
            line.add(word.toString());
        }
        FreshProcess best = FreshProcess.run(line, WORK.resolve("last-run.log"));
        for (int turn = 1; turn < turns; turn++) {
            FreshProcess next = FreshProcess.run(line, WORK.resolve("last-run.log"));
            best = next.cpuSeconds() < best.cpuSeconds() ? next : best;
        }
        return best;
    }

    /** A row of bump-outs; over 100 walls shorter ones, so that the row stays within 1,000 ft. */
    private static Path job(int walls) throws IOException {
        double scale = Math.min(1, 100.0 / walls);
        ObjectNode job = (ObjectNode) JSON.readTree(
                SAMPLES.resolve("block-basement-to-swale/job.json").toFile());
        ObjectNode model = (ObjectNode) job.get("walls").get(0);
        job.remove("$schema");
        ((ObjectNode) job.get("site")).putArray("limits");
        ((ObjectNode) job.get("site"))
                .putObject("house")
                .put("eastWest", "1000 ft")
                .put("northSouth", "1000 ft");
        job.putArray("photos");
        job.get("observations").forEach(seen -> ((ObjectNode) seen).putArray("photos"));
        job.putArray("items");
        ((ObjectNode) job.get("schedule")).put("latestFinish", "2031-09-25").put("workingDays", 365);
        ArrayNode row = job.putArray("walls");
        ArrayNode corners = job.putArray("corners");
        ArrayNode along = ((ObjectNode) job.get("water").get("drains").get(0)).putArray("along");
        double north = 0;
        double side = 0;
        for (int i = 0; i < walls; i++) {
            Stretch stretch = BUMP.get(i % BUMP.size());
            boolean across = stretch.faces().equals("north");
            ObjectNode wall = model.deepCopy();
            wall.put("label", "W" + i)
                    .put("where", "stretch " + i)
                    .put("faces", stretch.faces())
                    .put("from", feet(across ? north : side))
                    .put("length", feet(stretch.feet() * scale))
                    .put("depth", "4 ft 8 in");
            wall.putArray("openings");
            north += across ? stretch.feet() * scale : 0;
            side += across ? 0 : 6 * scale;
            row.add(wall);
            along.add("W" + i);
            if (i > 0) {
                corners.addObject()
                        .put("first", "W" + (i - 1) + " end")
                        .put("second", "W" + i + " start")
                        .put("kind", BUMP.get((i - 1) % BUMP.size()).corner());
            }
        }
        Path folder = Files.createDirectories(WORK.resolve("row-" + walls));
        Files.writeString(folder.resolve("job.json"), job.toPrettyString());
        return folder;
    }

    private static String feet(double feet) {
        return String.format(Locale.ROOT, "%.2f ft", feet);
    }
}
