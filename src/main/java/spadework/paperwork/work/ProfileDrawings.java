// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.drawing.profile.GroundPoint;
import spadework.drawing.profile.ProfileChain;
import spadework.drawing.profile.ProfileReach;
import spadework.drawing.profile.ProfileSketch;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.measure.Length;
import spadework.paperwork.Dossier;
import spadework.water.Joint;
import spadework.water.Network;
import spadework.water.Reach;
import spadework.water.ReachKind;
import spadework.water.Station;

/** The way of the water seen from the side: each drain through its main, and each roof line, down to the outlet. */
public final class ProfileDrawings {
    private final Dossier dossier;
    private final Job job;
    private final Network network;

    private ProfileDrawings(Dossier dossier) {
        this.dossier = dossier;
        this.job = dossier.job();
        this.network = Network.of(job, dossier.book());
    }

    public static List<CaptionedDrawing> of(Dossier dossier) {
        return new ProfileDrawings(dossier).all();
    }

    private List<CaptionedDrawing> all() {
        return network.reaches().stream()
                .filter(reach -> reach.kind() == ReachKind.DRAIN || reach.kind() == ReachKind.ROOF_LINE)
                .map(this::downFrom)
                .toList();
    }

    /** A reach and what follows it by its own fall, to the outlet. */
    private CaptionedDrawing downFrom(Reach first) {
        List<ProfileReach> reaches = new ArrayList<>(List.of(drawn(first)));
        String into = first.into();
        for (Optional<Reach> next = after(into); next.isPresent(); next = after(into)) {
            reaches.add(drawn(next.get()));
            into = next.get().into();
        }
        String end = into;
        Optional<Outlet> outlet = job.water().outlets().stream()
                .filter(candidate -> candidate.label().equals(end))
                .findFirst();
        ProfileChain chain = new ProfileChain(
                reaches,
                end,
                outlet.map(Outlet::what).orElse(""),
                outlet.flatMap(Outlet::level),
                job.site().benchmark().orElse(""));
        return new CaptionedDrawing(
                reaches.stream().map(ProfileReach::label).toList(),
                dossier.terms().get("drawing.profile", "outlet", end),
                ProfileSketch.of(chain, dossier.terms().language()));
    }

    /** The solid run of that label; a sump's discharge pipe is under pressure and has no fall to show. */
    private Optional<Reach> after(String label) {
        return network.ofRun(label).stream()
                .filter(reach -> reach.kind() != ReachKind.SUMP_DISCHARGE)
                .findFirst();
    }

    private ProfileReach drawn(Reach reach) {
        Station start = reach.stations().get(0);
        Station end = reach.stations().get(reach.stations().size() - 1);
        return new ProfileReach(
                label(reach),
                kind(reach),
                Length.ofFeet(reach.length().number()),
                start.invert(),
                end.invert(),
                start.ground(),
                end.ground(),
                corners(reach),
                reach.pipe().inside(),
                reach.pipe().outside());
    }

    /** The ground at the places that a drain passes between its ends. */
    private static List<GroundPoint> corners(Reach reach) {
        List<Station> stations = reach.stations();
        return stations.subList(1, stations.size() - 1).stream()
                .filter(station -> station.joints().contains(Joint.BEND))
                .flatMap(station -> station.ground().map(level -> new GroundPoint(station.at(), level)).stream())
                .toList();
    }

    /** A drain that is teed in the middle has two reaches; each says from which end its water comes. */
    private String label(Reach reach) {
        if (reach.label().equals(reach.run())) {
            return reach.label();
        }
        String end = reach.label().endsWith("/1") ? "drawing.start" : "drawing.end";
        return dossier.terms().get(end, "label", reach.run());
    }

    private static ProfileReach.Kind kind(Reach reach) {
        return switch (reach.kind()) {
            case DRAIN -> ProfileReach.Kind.DRAIN;
            case ROOF_LINE -> ProfileReach.Kind.ROOF_LINE;
            case MAIN, SUMP_DISCHARGE -> ProfileReach.Kind.MAIN;
        };
    }
}
