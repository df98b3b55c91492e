// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.StringJoiner;
import spadework.measure.Length;
import spadework.wording.Wording;

/** A profile for whoever cannot see it: reach by reach, with every level. */
public final class ProfileInWords {
    private static final Wording WORDS = Wording.beside(ProfileInWords.class);

    private final ProfileWords words;
    private final Wording said;

    ProfileInWords(ProfileWords words) {
        this.words = words;
        this.said = WORDS.in(words.language());
    }

    String of(ProfileChain chain) {
        StringJoiner text = new StringJoiner(" ");
        text.add(said.get("profile-in-words.profile-pipes-from-high"));
        text.add(
                chain.canBeDrawn()
                        ? said.get(
                                "profile-in-words.heights-are-drawn-times",
                                ProfileWords.times(ProfileFrame.of(chain).exaggeration()))
                        : words.tooFewLevels());
        for (ProfileReach reach : chain.reaches()) {
            text.add(said.get(
                    "profile-in-words.reach",
                    reach.label(),
                    words.kind(reach.kind()),
                    reach.length().text(),
                    words.slopeText(reach),
                    reach.startInvert().map(Length::levelText).orElse(words.notMeasured()),
                    reach.endInvert().map(Length::levelText).orElse(words.notMeasured()),
                    reach.startGrade().map(Length::levelText).orElse(words.notMeasured()),
                    reach.endGrade().map(Length::levelText).orElse(words.notMeasured())));
            for (GroundPoint point : reach.between()) {
                text.add(said.get(
                        "profile-in-words.ground-at-corner",
                        ProfileWords.station(point.at().feet()),
                        point.level().levelText()));
            }
        }
        for (ProfileStation station : ProfileStation.of(chain)) {
            station.cover()
                    .ifPresent(cover -> text.add(said.get(
                            "profile-in-words.cover-over-pipe-along",
                            ProfileWords.station(station.feet()),
                            words.cover(cover))));
        }
        text.add(said.get(
                "profile-in-words.outlet-level",
                chain.outlet(),
                chain.place(),
                chain.outletLevel().map(Length::levelText).orElse(words.notMeasured())));
        return text.toString();
    }
}
