package spadework.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.drawing.Shape.Role;
import spadework.job.Job;
import spadework.job.Wall;

/**
 * The walls' own labels, in bold inside the house, each behind its wall. If they do not all fit, every wall gets a
 * number in brackets instead and the key says which is which: some of both would be read wrongly.
 */
final class WallNames {
    private static final double WIDEST = 96;

    private WallNames() {}

    /** For every wall the ways to name it, the best first, on a sheet on which everything else is drawn. */
    static List<List<Wish>> of(Job job, Frame frame, List<Shape> drawn) {
        List<List<Wish>> labels = new ArrayList<>();
        List<List<Wish>> numbers = new ArrayList<>();
        for (Wall wall : job.walls()) {
            String inKey = WallDrawing.keyText(wall);
            labels.add(freer(name(wall, wall.label(), Wish.LARGE, inKey, false, frame), wall, frame));
            String mark = "(" + labels.size() + ")";
            List<Wish> number = new ArrayList<>();
            for (double size : new double[] {Wish.LARGE, Wish.SMALL}) {
                number.addAll(freer(name(wall, mark, size, mark + " " + inKey, true, frame), wall, frame));
            }
            Wish last = number.get(number.size() - 1);
            Rect outside = frame.outside(wall.faces(), Bands.DRAIN);
            number.add(last.withLeader(frame.at(WallDrawing.middle(wall), 4), outside, 110));
            numbers.add(number);
        }
        return allFit(labels, drawn) ? labels : numbers;
    }

    private static boolean allFit(List<List<Wish>> names, List<Shape> drawn) {
        List<Shape> tried = new ArrayList<>(drawn);
        for (List<Wish> oneOf : names) {
            List<Shape> placed = oneOf.stream()
                    .filter(wish -> wish.width() <= WIDEST)
                    .map(wish -> Placer.place(wish, tried))
                    .filter(shapes -> !shapes.isEmpty())
                    .findFirst()
                    .orElse(List.of());
            if (placed.isEmpty()) {
                return false;
            }
            tried.addAll(placed);
        }
        return true;
    }

    private static Wish name(Wall wall, String text, double size, String inKey, boolean explained, Frame frame) {
        double half = Spot.isAcross(wall.faces()) ? size / 2 : LabelText.width(text, size) / 2;
        Point target = frame.at(WallDrawing.middle(wall), -half - 6);
        Rect zone = WallDrawing.along(wall, frame, frame.house().grown(-3), 6);
        return new Wish(text, size, true, Role.WALL, "middle", target, zone, 40, Optional.empty(), inKey, explained);
    }

    /** The name behind its wall, or else anywhere in the house with a line to its wall. */
    private static List<Wish> freer(Wish name, Wall wall, Frame frame) {
        Point wallInside = frame.at(WallDrawing.middle(wall), -4);
        return List.of(name, name.withLeader(wallInside, frame.house().grown(-3), 110));
    }
}
