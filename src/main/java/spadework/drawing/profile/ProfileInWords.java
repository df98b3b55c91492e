// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.StringJoiner;
import spadework.measure.Length;
import spadework.wording.Wording;

/** A profile for whoever cannot see it: reach by reach, with every level. */
public final class ProfileInWords {
    private static final Wording WORDS = Wording.beside(ProfileInWords.class);

    private ProfileInWords() {}

    static String of(ProfileChain chain) {
        StringJoiner text = new StringJoiner(" ");
        text.add(WORDS.get("profile-in-words.profile-pipes-from-high"));
        text.add(
                chain.canBeDrawn()
                        ? WORDS.get(
                                "profile-in-words.heights-are-drawn-times",
                                ProfileWords.times(ProfileFrame.of(chain).exaggeration()))
                        : ProfileWords.TOO_FEW_LEVELS);
        for (ProfileReach reach : chain.reaches()) {
            text.add(WORDS.get(
                    "profile-in-words.reach",
                    reach.label(),
                    ProfileWords.kind(reach.kind()),
                    reach.length().text(),
                    ProfileWords.slopeText(reach),
                    reach.startInvert().map(Length::levelText).orElse(ProfileWords.NOT_MEASURED),
                    reach.endInvert().map(Length::levelText).orElse(ProfileWords.NOT_MEASURED),
                    reach.startGrade().map(Length::levelText).orElse(ProfileWords.NOT_MEASURED),
                    reach.endGrade().map(Length::levelText).orElse(ProfileWords.NOT_MEASURED)));
        }
        for (ProfileStation station : ProfileStation.of(chain)) {
            station.cover()
                    .ifPresent(cover -> text.add(WORDS.get(
                            "profile-in-words.cover-over-pipe-along",
                            ProfileWords.station(station.feet()),
                            ProfileWords.cover(cover))));
        }
        text.add(WORDS.get(
                "profile-in-words.outlet-level",
                chain.outlet(),
                chain.place(),
                chain.outletLevel().map(Length::levelText).orElse(ProfileWords.NOT_MEASURED)));
        return text.toString();
    }
}
