// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * What a job digs and fills, worked out from its file alone: the ground is cut into thin slices whose plan areas a
 * geometry library measures. It calls nothing of the program. Feet throughout.
 */
final class GroundByHand {
    /** Pipe of the drain and of mains, 4 in: outside 4.215 in (ASTM D2729 and D3034, from memory). */
    private static final double PIPE = 4.215 / 12;

    /** ASTM D2729 4 in: least inside 3.875 in (from memory); an invert lies a shell over the pipe's underside. */
    private static final double SHELL = (4.215 - 3.875) / 2 / 12;

    /** PVC Schedule 40, 1½ in: outside 1.9 in (from memory). */
    private static final double DISCHARGE = 1.9 / 12;

    private static final double SLICE = 1.0 / 48;
    private static final int STATIONS = 4000;
    private static final GeometryFactory PLANS = new GeometryFactory();
    private static final Pattern PART = Pattern.compile("(-?[0-9.]+) ?(ft|in|mil|mm|cm|m|sf)\\b");

    private final JsonNode job;
    private final double slope;
    private final double mainSlope;
    private final List<Wall> walls = new ArrayList<>();

    /** A wall laid out in plan; dx and dy point along it, and it is dug on its left. */
    private record Wall(
            JsonNode node, double length, double start, double end, double tf, double p, double b, Place at) {
        double depth(double share) {
            return start + (end - start) * share;
        }
    }

    private record Place(double x, double y, int dx, int dy) {}

    private interface Top {
        double at(int wall, double share);
    }

    /**
     * A job as its file has it.
     *
     * @param slope run of the walls' banks for each rise, as the law has it there
     * @param mainSlope the same of a main where it is 5 ft deep or deeper
     */
    GroundByHand(JsonNode job, double slope, double mainSlope) {
        this.job = job;
        this.slope = slope;
        this.mainSlope = mainSlope;
        layOut();
    }

    /** A length, an area or a film as written, in feet, square feet or mils. */
    static double measure(String text) {
        double sum = 0;
        for (Matcher part = PART.matcher(text); part.find(); ) {
            double number = Double.parseDouble(part.group(1));
            sum += switch (part.group(2)) {
                case "ft", "sf", "mil" -> number;
                case "in" -> number / 12;
                case "m" -> number / 0.3048;
                case "cm" -> number / 30.48;
                case "mm" -> number / 304.8;
                default -> throw new IllegalArgumentException(text);
            };
        }
        return sum;
    }

    private void layOut() {
        double x = 0;
        double y = 0;
        int dx = 1;
        int dy = 0;
        for (JsonNode node : job.get("walls")) {
            JsonNode depth = node.get("depth");
            boolean level = depth.isTextual();
            double length = measure(node.get("length").asText());
            walls.add(new Wall(
                    node,
                    length,
                    measure((level ? depth : depth.get("start")).asText()),
                    measure((level ? depth : depth.get("end")).asText()),
                    measure(node.get("footing").get("thickness").asText()),
                    measure(node.get("footing").get("projection").asText()),
                    measure(node.get("digging").get("bottomWidth").asText()),
                    new Place(x, y, dx, dy)));
            x += dx * length;
            y += dy * length;
            int turn = isOutside(walls.size() - 1) ? 1 : -1;
            int along = dx;
            dx = turn * dy;
            dy = -turn * along;
        }
    }

    private boolean isClosed() {
        return job.get("corners").size() == walls.size();
    }

    private boolean hasCorner(int wall) {
        return wall < job.get("corners").size();
    }

    private boolean isOutside(int wall) {
        return hasCorner(wall)
                && job.get("corners").get(wall).get("kind").asText().equals("outside");
    }

    /** Soil of the walls' trenches with the faces of free ends, cubic yards. */
    double soil() {
        double ends = 0;
        if (!isClosed()) {
            ends += end(walls.get(0), 0) + end(walls.get(walls.size() - 1), 1);
        }
        return (sliced((wall, share) -> walls.get(wall).tf() + walls.get(wall).depth(share)) + ends) / 27;
    }

    /** A wedge before the end: at a height z it reaches s z out, as wide as the trench is there. */
    private double end(Wall wall, double share) {
        double height = wall.tf() + wall.depth(share);
        double sum = 0;
        double dz = height / STATIONS;
        for (int i = 0; i < STATIONS; i++) {
            double z = (i + 0.5) * dz;
            sum += slope * z * (wall.b() + slope * z + (z > wall.tf() ? wall.p() : 0)) * dz;
        }
        return sum;
    }

    /** Drain stone without the pipe in it, cubic yards. */
    double stone() {
        return (sliced(this::stoneTop) - Math.PI * PIPE * PIPE / 4 * wallFeet()) / 27;
    }

    private double wallFeet() {
        return walls.stream().mapToDouble(Wall::length).sum();
    }

    /** 6 in over the footing's top or the pipe's, whichever is higher (IRC R405.1). */
    private double stoneTop(int index, double share) {
        Wall wall = walls.get(index);
        JsonNode drain = job.get("water").get("drains").get(0);
        double under = 2.0 / 12;
        if (drain.has("startInvert")) {
            double gone = 0;
            double fromWalls = 0;
            for (int i = 0; i < index; i++) {
                gone += walls.get(i).length() + gain(i);
                fromWalls += walls.get(i).length();
            }
            double start = measure(drain.get("startInvert").asText());
            double end = measure(drain.get("endInvert").asText());
            double invert = start + (end - start) * (gone + wall.length() * share) / drainPipe();
            double topAtStart =
                    measure(drain.get("startGrade").asText()) - walls.get(0).start();
            double topAtEnd =
                    measure(endGrade(drain)) - walls.get(walls.size() - 1).end();
            double top = topAtStart + (topAtEnd - topAtStart) * (fromWalls + wall.length() * share) / wallFeet();
            under = invert - SHELL - (top - wall.tf());
        }
        return Math.max(wall.tf() + 0.5, under + PIPE + 0.5);
    }

    /** Perforated pipe along its middle, p + B ÷ 2 off the walls, feet. */
    double drainPipe() {
        double sum = wallFeet();
        for (int i = 0; i < job.get("corners").size(); i++) {
            sum += gain(i);
        }
        return sum;
    }

    private double gain(int corner) {
        Wall one = walls.get(corner);
        Wall other = walls.get((corner + 1) % walls.size());
        double both = one.p() + one.b() / 2 + other.p() + other.b() / 2;
        return isOutside(corner) ? both : -both;
    }

    /** Between heights at which a footing or a top ends, slices of a quarter inch or less. */
    private double sliced(Top top) {
        TreeSet<Double> faces = new TreeSet<>(List.of(0.0));
        for (int i = 0; i < walls.size(); i++) {
            faces.addAll(List.of(walls.get(i).tf(), walls.get(i).tf() + 0.5, top.at(i, 0), top.at(i, 1)));
        }
        double sum = 0;
        double from = 0;
        for (double to : faces) {
            int slices = (int) Math.ceil((to - from) / SLICE);
            for (int i = 0; i < slices; i++) {
                double dz = (to - from) / slices;
                sum += area(top, from + (i + 0.5) * dz) * dz;
            }
            from = to;
        }
        return sum;
    }

    private double area(Top top, double z) {
        List<Geometry> dug = new ArrayList<>();
        List<Geometry> standing = new ArrayList<>();
        List<Coordinate> outline = new ArrayList<>();
        for (int i = 0; i < walls.size(); i++) {
            Wall wall = walls.get(i);
            double reach = wall.p() + wall.b() + slope * z;
            outline.add(new Coordinate(wall.at().x(), wall.at().y()));
            double from = top.at(i, 0) > z ? 0 : crossing(top, i, z, true);
            double to = top.at(i, 1) > z ? 1 : crossing(top, i, z, false);
            if (to > from) {
                dug.add(box(wall, from * wall.length(), to * wall.length(), reach));
            }
            if (z < wall.tf()) {
                standing.add(box(wall, 0, wall.length(), wall.p()));
            }
            if (isOutside(i)) {
                int k = (i + 1) % walls.size();
                Wall next = walls.get(k);
                if (Math.max(top.at(i, 1), top.at(k, 0)) > z) {
                    dug.add(box(wall, wall.length(), wall.length() + next.p() + next.b() + slope * z, reach));
                }
                if (z < wall.tf()) {
                    standing.add(box(wall, wall.length(), wall.length() + next.p(), wall.p()));
                }
            }
        }
        if (dug.isEmpty()) {
            return 0;
        }
        if (isClosed()) {
            outline.add(outline.get(0));
            standing.add(PLANS.createPolygon(outline.toArray(Coordinate[]::new)));
        }
        Geometry open = UnaryUnionOp.union(dug);
        return standing.isEmpty()
                ? open.getArea()
                : open.difference(UnaryUnionOp.union(standing)).getArea();
    }

    /** Share of a wall at which its top passes a height, found by halving. */
    private static double crossing(Top top, int wall, double z, boolean fromStart) {
        if (Math.max(top.at(wall, 0), top.at(wall, 1)) <= z) {
            return fromStart ? 1 : 0;
        }
        double below = fromStart ? 0 : 1;
        double above = fromStart ? 1 : 0;
        for (int i = 0; i < 50; i++) {
            double middle = (below + above) / 2;
            if (top.at(wall, middle) > z) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return above;
    }

    private static Geometry box(Wall wall, double from, double to, double out) {
        Place at = wall.at();
        Envelope box = new Envelope(new Coordinate(at.x() + at.dx() * from, at.y() + at.dy() * from));
        box.expandToInclude(at.x() + at.dx() * to - at.dy() * out, at.y() + at.dy() * to + at.dx() * out);
        return PLANS.toGeometry(box);
    }

    /** Soil of mains, of the hole for a basin and of its discharge pipe, cubic yards. */
    double trenches() {
        double sum = 0;
        for (JsonNode main : job.get("water").get("mains")) {
            sum += main(main);
        }
        for (JsonNode outlet : job.get("water").get("outlets")) {
            if (outlet.has("pit")) {
                sum += side(outlet) * side(outlet) * hole(outlet) - beside(outlet);
                sum += discharge(outlet);
                sum += lead(outlet);
            }
        }
        return sum / 27;
    }

    /** What the trench of the wall beside the hole takes of it, where the last drained wall ends, cubic feet. */
    private double beside(JsonNode outlet) {
        if (!outlet.get("pit").has("fromFooting")) {
            return 0;
        }
        Wall wall = walls.get(walls.size() - 1);
        double away = measure(outlet.get("pit").get("fromFooting").asText());
        double height = wall.tf() + wall.depth(1);
        double sum = 0;
        for (int i = 0; i < STATIONS; i++) {
            double z = (i + 0.5) * height / STATIONS;
            double reached = wall.b() + slope * z - away;
            sum += Math.max(0, Math.min(side(outlet), reached)) * side(outlet) * height / STATIONS;
        }
        return sum;
    }

    /** From station to station; laid back on both sides where it is 5 ft deep or deeper. */
    private double main(JsonNode main) {
        double length = measure(main.get("length").asText());
        double width = measure(main.get("trench").get("width").asText());
        double typed = measure(main.get("trench").get("depth").asText());
        boolean levels = main.has("startInvert") && main.has("startGrade");
        double from = levels ? depth(main, "start") : typed;
        double to = levels ? depth(main, "end") : typed;
        double sum = 0;
        for (int i = 0; i < STATIONS; i++) {
            double depth = from + (to - from) * (i + 0.5) / STATIONS;
            double s = depth >= 5 - 1e-9 ? mainSlope : 0;
            double at = length * (i + 0.5) / STATIONS;
            double left = Math.max(
                    0, depth - besideWall(at - walls.get(walls.size() - 1).b() / 2));
            sum += (width * left + s * left * left) * length / STATIONS;
        }
        return sum;
    }

    /** Grade to the bottom of what the trench of the last wall takes, so far beyond its bottom's outer edge; feet. */
    private double besideWall(double out) {
        Wall wall = walls.get(walls.size() - 1);
        double height = wall.tf() + wall.depth(1);
        return out <= 0 ? height : slope > 0 ? Math.max(0, height - out / slope) : 0;
    }

    /** 12 in wide and 18 in deep, from the middle of the hole; what lies in hole or wall's trench is dug already. */
    private double discharge(JsonNode outlet) {
        double length = measure(outlet.get("discharge").asText());
        double away = measure(outlet.get("pit").get("fromFooting").asText());
        double out = away + side(outlet) / 2 - walls.get(walls.size() - 1).b();
        double sum = 0;
        for (int i = 0; i < STATIONS; i++) {
            double at = length * (i + 0.5) / STATIONS;
            double dug = at < side(outlet) / 2 ? 1.5 : besideWall(out + at);
            sum += Math.max(0, 1.5 - dug) * length / STATIONS;
        }
        return sum;
    }

    /** 12 in wide, from the bottom of the last wall's trench to the hole, 2 in deeper than the drain's end. */
    private double lead(JsonNode outlet) {
        double length = leadFeet(outlet);
        JsonNode drain = job.get("water").get("drains").get(0);
        double depth = depth(drain, "end");
        double sum = 0;
        for (int i = 0; i < STATIONS; i++) {
            sum += Math.max(0, depth - besideWall(length * (i + 0.5) / STATIONS)) * length / STATIONS;
        }
        return sum;
    }

    private double leadFeet(JsonNode outlet) {
        return measure(outlet.get("pit").get("fromFooting").asText())
                - walls.get(walls.size() - 1).b();
    }

    private static double depth(JsonNode main, String end) {
        return measure(main.get(end + "Grade").asText())
                - measure(main.get(end + "Invert").asText())
                + 2.0 / 12;
    }

    private static double side(JsonNode outlet) {
        return measure(outlet.get("pit").get("diameter").asText()) + 2;
    }

    /** From grade to the drain that comes in at its end, the basin below it and 4 in of stone. */
    private double hole(JsonNode outlet) {
        JsonNode drain = job.get("water").get("drains").get(0);
        double entry = measure(endGrade(drain)) - measure(drain.get("endInvert").asText());
        return entry + measure(outlet.get("pit").get("depth").asText()) + 4.0 / 12;
    }

    /** Everything that is filled again with soil, compacted, cubic yards. */
    double backfill() {
        double laid = Math.PI * PIPE * PIPE / 4 * wallFeet() / 27;
        for (JsonNode main : job.get("water").get("mains")) {
            laid += Math.PI * PIPE * PIPE / 4 * measure(main.get("length").asText()) / 27;
        }
        for (JsonNode outlet : job.get("water").get("outlets")) {
            if (outlet.has("pit")) {
                double diameter = measure(outlet.get("pit").get("diameter").asText());
                laid += Math.PI * diameter * diameter / 4 * (hole(outlet) - 4.0 / 12) / 27;
                laid += Math.PI * PIPE * PIPE / 4 * leadFeet(outlet) / 27;
                laid += Math.PI
                        * DISCHARGE
                        * DISCHARGE
                        / 4
                        * measure(outlet.get("discharge").asText())
                        / 27;
            }
        }
        return soil() + trenches() - stone() - laid;
    }

    /** Bank soil left over, less than nothing where it is missing; 2.5 cf of fill for each foot of regrading (F-22). */
    double surplus(double shrink) {
        double wedge = 2.5 * measure(job.get("restoration").get("regrade").asText()) / 27;
        return soil() + trenches() - (backfill() + wedge) / (1 - shrink);
    }

    /** Gallons of coating without waste: face and 4 in of cove at the film the job promises, 231 cu in a gallon. */
    double gallons(double solids) {
        double sum = 0;
        for (Wall wall : walls) {
            JsonNode film = wall.node().get("finish").get("dryFilm");
            boolean metric = film.asText().endsWith("mm");
            double mils = metric ? measure(film.asText()) * 12000 : measure(film.asText());
            double feet = wall.length() * ((wall.start() + wall.end()) / 2 + 4.0 / 12);
            sum += feet * 144 * mils / 1000 / solids / 231;
        }
        return sum;
    }

    /** Where the ground was shot at one end of a drain alone, the footing is taken as level. */
    private static String endGrade(JsonNode drain) {
        return drain.path("endGrade").asText(drain.get("startGrade").asText());
    }
}
