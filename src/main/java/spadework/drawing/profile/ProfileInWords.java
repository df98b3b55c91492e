// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.StringJoiner;
import spadework.measure.Length;

/** A profile for whoever cannot see it: reach by reach, with every level. */
public final class ProfileInWords {
    private ProfileInWords() {}

    static String of(ProfileChain chain) {
        StringJoiner text = new StringJoiner(" ");
        text.add("Profile of the pipes from the high end to the outlet.");
        text.add(
                chain.canBeDrawn()
                        ? "Heights are drawn %s times as large as lengths."
                                .formatted(ProfileWords.times(
                                        ProfileFrame.of(chain).exaggeration()))
                        : ProfileWords.TOO_FEW_LEVELS);
        for (ProfileReach reach : chain.reaches()) {
            text.add(("%s, %s, is %s long; %s. Its bottom lies at %s at the start and %s at the end; the ground there"
                            + " at %s and %s.")
                    .formatted(
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
                    .ifPresent(cover -> text.add("Cover over the pipe %s along: %s."
                            .formatted(ProfileWords.station(station.feet()), ProfileWords.cover(cover))));
        }
        text.add("Outlet %s, %s: level %s."
                .formatted(
                        chain.outlet(),
                        chain.place(),
                        chain.outletLevel().map(Length::levelText).orElse(ProfileWords.NOT_MEASURED)));
        return text.toString();
    }
}
