// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelPlacer;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.ScaleBar;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Role;
import spadework.measure.Length;
import spadework.wording.Language;

/**
 * The way of the water seen from the side: ground and pipe by station, with every level that was measured. Heights
 * are drawn larger than lengths by a round number that the drawing states. About 470 by 260 points.
 */
public final class ProfileSketch {
    private static final double TITLE_SIZE = 11;
    private static final double WIDEST_NAME = 90;

    private final ProfileChain chain;
    private final ProfileWords words;

    private ProfileSketch(ProfileChain chain, ProfileWords words) {
        this.chain = chain;
        this.words = words;
    }

    /**
     * Draws a chain.
     *
     * @param language of its words
     */
    public static Scene of(ProfileChain chain, Language language) {
        return new ProfileSketch(chain, new ProfileWords(language)).scene();
    }

    private Scene scene() {
        DrawingSheet sheet = new DrawingSheet();
        sheet.draw(title());
        ProfileFrame frame = ProfileFrame.of(chain);
        boolean leveled = chain.canBeDrawn();
        if (leveled) {
            ProfileLines.draw(chain, frame, sheet);
        } else {
            sheet.draw(small(ProfileFrame.EDGE, 30, words.tooFewLevels()));
            frame = frame.withoutHeights();
        }
        double end = new ProfileTable(words, sheet).draw(chain, frame);
        if (leveled) {
            names(frame, sheet);
        }
        String scale = leveled ? words.scale(frame.exaggeration()) : words.scale();
        Point bar = new Point(ProfileFrame.EDGE, end + 15);
        double last = ScaleBar.draw(bar, frame.across(), scale, ProfileFrame.WIDTH - ProfileFrame.EDGE, sheet);
        double foot = last + 9;
        if (!chain.benchmark().isEmpty()) {
            String text = LabelText.cut(
                    words.benchmark(chain.benchmark()), LabelRequest.SMALL, ProfileFrame.WIDTH - 2 * ProfileFrame.EDGE);
            sheet.draw(small(ProfileFrame.EDGE, last + 15, text));
            foot += 13;
        }
        return new Scene(ProfileFrame.WIDTH, foot, sheet.shapes(), new ProfileInWords(words).of(chain));
    }

    private Label title() {
        String text = LabelText.cut(words.title(chain), TITLE_SIZE, true, ProfileFrame.WIDTH - 2 * ProfileFrame.EDGE);
        return new Label(ProfileFrame.EDGE, 13, text, "start", TITLE_SIZE, true, Role.WALL);
    }

    /** The ground's name over its longest line, the pipes' names and slopes at their lines, the outlet's beside it. */
    private void names(ProfileFrame frame, DrawingSheet sheet) {
        Rect zone = new Rect(ProfileFrame.LEFT, 20, ProfileFrame.WIDTH - 4, frame.foot() + 2);
        ground(frame, zone, sheet);
        double feet = 0;
        for (ProfileReach reach : chain.reaches()) {
            double middle = feet + reach.length().feet() / 2;
            if (reach.isLeveled()) {
                pipe(reach, middle, frame, zone, sheet);
            }
            feet += reach.length().feet();
        }
        for (ProfileStation station : ProfileStation.of(chain)) {
            if (station.inverts().isEmpty()) {
                Point at = frame.at(station.feet(), (frame.low() + frame.high()) / 2);
                LabelRequest wish = new LabelRequest(
                        words.notMeasured(),
                        LabelRequest.SMALL,
                        false,
                        Role.PLAIN,
                        "middle",
                        new LabelSpot(at, zone, 60),
                        Optional.empty(),
                        "",
                        false);
                LabelPlacer.place(wish, sheet.shapes()).forEach(sheet::draw);
            }
        }
        Optional<Length> level = chain.outletLevel();
        if (level.isPresent()) {
            Point at = frame.at(chain.feet(), level.get().feet());
            String text = LabelText.cut(chain.outlet(), LabelRequest.SMALL, WIDEST_NAME) + " "
                    + level.get().levelText();
            double half = LabelText.width(text, LabelRequest.SMALL) / 2;
            place(text, at.plus(32 + half, 0), at.plus(15, 0), zone, sheet);
        }
    }

    /** Once for all reaches, where the line of the ground is longest. */
    private void ground(ProfileFrame frame, Rect zone, DrawingSheet sheet) {
        double feet = 0;
        double longest = 0;
        Optional<Point> at = Optional.empty();
        for (ProfileReach reach : chain.reaches()) {
            double length = reach.length().feet();
            if (reach.startGrade().isPresent() && reach.endGrade().isPresent() && length > longest) {
                longest = length;
                double level =
                        reach.startGrade().get().feet() + reach.endGrade().get().feet();
                at = Optional.of(frame.at(feet + length / 2, level / 2));
            }
            feet += length;
        }
        at.ifPresent(ground -> place(words.groundLine(), ground.plus(0, -9), ground, zone, sheet));
    }

    /** Over the pipe's line where there is room, else under it, else at the end of a line to it. */
    private void pipe(ProfileReach reach, double middle, ProfileFrame frame, Rect zone, DrawingSheet sheet) {
        double level = (reach.startInvert().orElseThrow().feet()
                        + reach.endInvert().orElseThrow().feet())
                / 2;
        Point bottom = frame.at(middle, level);
        Point over = frame.at(middle, level + reach.insideDiameter().feet()).plus(0, -11);
        String text = LabelText.cut(reach.label(), LabelRequest.SMALL, WIDEST_NAME) + " " + words.slope(reach);
        double half = LabelText.width(text, LabelRequest.SMALL) / 2;
        place(text, List.of(over, bottom.plus(-half, 11)), bottom, zone, sheet);
    }

    private static void place(String text, Point target, Point named, Rect zone, DrawingSheet sheet) {
        place(text, List.of(target), named, zone, sheet);
    }

    private static void place(String text, List<Point> targets, Point named, Rect zone, DrawingSheet sheet) {
        List<LabelRequest> ways = new ArrayList<>();
        for (Point target : targets) {
            ways.add(new LabelRequest(
                    text,
                    LabelRequest.SMALL,
                    false,
                    Role.PLAIN,
                    "middle",
                    new LabelSpot(target, zone, 8),
                    Optional.empty(),
                    "",
                    false));
        }
        ways.add(ways.get(0).withLeader(named, zone, 115));
        ways.stream()
                .map(way -> LabelPlacer.place(way, sheet.shapes()))
                .filter(shapes -> !shapes.isEmpty())
                .findFirst()
                .ifPresent(shapes -> shapes.forEach(sheet::draw));
    }

    private static Label small(double x, double y, String text) {
        return new Label(x, y, text, "start", LabelRequest.SMALL, false, Role.PLAIN);
    }
}
