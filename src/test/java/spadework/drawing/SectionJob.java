// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import java.util.List;
import java.util.Random;
import spadework.drawing.section.WallCovering;
import spadework.job.Digging;
import spadework.job.Footing;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Site;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.takeoff.CrossSection;

/** Walls to cut through, one by one and by seed. All of it is invented. */
public final class SectionJob {
    public static final WallCovering RUBBER = new WallCovering("liquid synthetic rubber", "60 mil", "waterproofing");

    private SectionJob() {}

    /** A wall of that depth, in feet, with a footing of 8 by 6 in and a bottom of 24 in. */
    public static CrossSection at(double depth, SoilType soil, Protection protection) {
        return at(depth, soil, protection, 8, 6, 24);
    }

    /** Depth in feet; footing and bottom width in inches. */
    public static CrossSection at(
            double depth, SoilType soil, Protection protection, double thickness, double projection, double bottom) {
        Wall deep = Jobs.deep(depth);
        Digging digging =
                new Digging(deep.digging().access(), deep.digging().handShare(), Length.ofInches(bottom), protection);
        Wall wall = new Wall(
                deep.label(),
                deep.where(),
                deep.place(),
                deep.depth(),
                new Footing(Length.ofInches(thickness), Length.ofInches(projection)),
                deep.surface(),
                deep.openings(),
                deep.windowWells(),
                digging);
        Site site = Jobs.with(Jobs.site(), new Soil(Texture.LOAM, Seepage.NONE, soil));
        Job job = Jobs.job(site, Jobs.water(), wall);
        return CrossSection.of(job, Books.standard(), job.walls().get(0));
    }

    /** A wall by seed: 1 to 19 ft deep in any soil, sloped, shielded or upright. */
    static CrossSection of(long seed) {
        Random random = new Random(seed);
        double depth = 1 + random.nextInt(37) / 2.0;
        SoilType soil = SoilType.values()[random.nextInt(SoilType.values().length)];
        Protection protection = Protection.values()[random.nextInt(Protection.values().length)];
        double thickness = 6 + random.nextInt(19);
        double projection = random.nextInt(13);
        double bottom = 12 + random.nextInt(37);
        CrossSection section = at(depth, soil, protection, thickness, projection, bottom);
        return random.nextInt(6) > 0 ? section : section.joinedWith(named(section, "Long wall of the old wing"));
    }

    /** The same with another footing. */
    static CrossSection withFooting(CrossSection section, Footing footing) {
        return new CrossSection(
                section.walls(),
                section.depth(),
                section.trenchDepth(),
                footing,
                section.bottomWidth(),
                section.bank(),
                section.reach(),
                section.bed(),
                section.floor(),
                section.beside(),
                section.noSoilOn());
    }

    static CrossSection named(CrossSection section, String... labels) {
        return new CrossSection(
                List.of(labels),
                section.depth(),
                section.trenchDepth(),
                section.footing(),
                section.bottomWidth(),
                section.bank(),
                section.reach(),
                section.bed(),
                section.floor(),
                section.beside(),
                section.noSoilOn());
    }
}
