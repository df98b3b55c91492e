// SPDX-License-Identifier: Apache-2.0
package spadework.intake.check;

import java.util.List;
import java.util.Optional;
import spadework.intake.source.SourceFile;
import spadework.intake.value.Choices;
import spadework.job.Downspout;
import spadework.job.House;
import spadework.job.HousePlace;
import spadework.job.Job;
import spadework.job.Side;
import spadework.job.Wall;
import spadework.measure.Length;

/** A wall lies within the side of the house that it faces, a front door and a downspout within theirs. */
public final class HouseSideChecks {
    /** Half an inch, to which lengths are printed. */
    private static final double SLACK_FEET = 0.5 / 12;

    private HouseSideChecks() {}

    static void check(Job job, SourceFile sheet) {
        door(job.site().house(), sheet);
        List<Downspout> downspouts = job.water().downspouts();
        for (int i = 0; i < downspouts.size(); i++) {
            String pointer = "/water/downspouts/" + i + "/place";
            Optional<HousePlace> place = downspouts.get(i).place();
            place.ifPresent(given -> downspout(job.site().house(), given, pointer, sheet));
        }
        for (int i = 0; i < job.walls().size(); i++) {
            Wall wall = job.walls().get(i);
            String pointer = "/walls/" + i;
            boolean sound = sheet.isSound("/site/house")
                    && sheet.isSound(pointer + "/faces")
                    && sheet.isSound(pointer + "/from")
                    && sheet.isSound(pointer + "/length");
            Length side = side(job.site().house(), wall.faces());
            Length reach = wall.from().plus(wall.length());
            if (sound && reach.feet() > side.feet() + SLACK_FEET) {
                sheet.fault(
                        pointer + "/length",
                        "a wall that reaches " + reach.text(),
                        "at most the " + side.text() + " of the house's " + Choices.word(wall.faces()) + " side",
                        "change \"length\" or \"from\", or the size of the house");
            }
        }
    }

    private static void door(House house, SourceFile sheet) {
        if (house.door().isEmpty() || !sheet.isSound("/site/house")) {
            return;
        }
        String pointer = "/site/house/door";
        Length door = house.door().get();
        if (house.front().isEmpty()) {
            sheet.fault(
                    pointer,
                    "a front door on no side of the house",
                    "a front door where \"front\" names its side",
                    "add \"front\", as \"south\"");
        } else if (door.feet() > side(house, house.front().get()).feet()) {
            sheet.fault(
                    pointer,
                    "a front door " + door.text() + " from the corner",
                    "at most the " + side(house, house.front().get()).text() + " of the front",
                    "change \"door\", \"front\", or the size of the house");
        }
    }

    private static void downspout(House house, HousePlace place, String pointer, SourceFile sheet) {
        Length side = side(house, place.side());
        boolean sound = sheet.isSound("/site/house") && sheet.isSound(pointer);
        if (sound && place.from().feet() > side.feet() + SLACK_FEET) {
            sheet.fault(
                    pointer + "/from",
                    "a downspout " + place.from().text() + " from the corner",
                    "at most the " + side.text() + " of the house's " + Choices.word(place.side()) + " side",
                    "change \"from\" or \"side\", or the size of the house");
        }
    }

    private static Length side(House house, Side faces) {
        return faces == Side.NORTH || faces == Side.SOUTH ? house.eastWest() : house.northSouth();
    }
}
