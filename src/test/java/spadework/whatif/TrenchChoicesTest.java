// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.job.Digging;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.LimitKind;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.job.TrenchEnds;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.office.Bid;
import spadework.office.portfolio.WhatIf;
import spadework.pricebook.Books;
import spadework.samples.Samples;
import spadework.whatif.Unlawful.Reason;

/** Ways to dig side by side: what soil, depth and room forbid, and that the prices are those of the whole path. */
class TrenchChoicesTest {

    private static Case job(SoilType type, Texture texture, double feetToFootingTop, Optional<Length> room) {
        var site = Jobs.with(Jobs.site(), new Soil(texture, Seepage.NONE, type));
        Wall wall = Jobs.deep(feetToFootingTop);
        if (room.isPresent()) {
            site = Jobs.with(
                    site, new SiteLimit(LimitKind.PROPERTY_LINE, wall.label(), room.get(), Optional.empty(), ""));
        }
        Job job = Jobs.job(site, Jobs.water(), Jobs.protectedBy(wall, Protection.SLOPED));
        return new Case(job, Books.company(), Books.standard());
    }

    private static List<Reason> against(Case job, TrenchWay way) {
        return TrenchLaw.against(way, job.job()).stream().map(Unlawful::reason).toList();
    }

    /** A job of one sloped wall is dug by slope; of the other ways none is the job's own. */
    @ParameterizedTest
    @EnumSource(TrenchWay.class)
    void choiceSaysWhetherTheJobIsDugSo(TrenchWay way) {
        TrenchChoice choice = TrenchChoices.of(job(SoilType.B, Texture.CLAY, 6, Optional.empty())).all().stream()
                .filter(one -> one.way() == way)
                .findFirst()
                .orElseThrow();
        assertThat(choice.inJob()).isEqualTo(way == TrenchWay.SLOPE);
    }

    /** 29 CFR 1926 Subpart P App. B: benches in cohesive soil of Type A and B, none in Type C (figures B-1.1 to 3). */
    @ParameterizedTest(name = "bench in {1} of type {0}: {2}")
    @CsvSource({
        "B, CLAY, ",
        "A, CLAY, ",
        "C, CLAY, NO_BENCH_IN_TYPE",
        "NOT_CLASSED, CLAY, NO_BENCH_IN_TYPE",
        "B, SANDY_LOAM, NO_BENCH_IN_TEXTURE",
        "B, UNKNOWN, NO_BENCH_IN_TEXTURE"
    })
    void benchesNeedSoilThatStandsInSteps(SoilType type, Texture texture, Reason reason) {
        assertThat(against(job(type, texture, 6, Optional.empty()), TrenchWay.BENCH))
                .isEqualTo(reason == null ? List.of() : List.of(reason));
    }

    /** App. A (b): soil from which water seeps freely is of Type C, whatever the file calls it. */
    @ParameterizedTest(name = "seepage {0}: {1}")
    @CsvSource({"NONE, ", "DAMP, ", "FREE, NO_BENCH_IN_WATER", "UNKNOWN, NO_BENCH_IN_WATER"})
    void benchesNeedDrySoil(Seepage seepage, Reason reason) {
        Case dry = job(SoilType.B, Texture.CLAY, 6, Optional.empty());
        Soil wet = new Soil(Texture.CLAY, seepage, SoilType.B);
        Case job = new Case(dry.job().withSite(Jobs.with(dry.job().site(), wet)), dry.company(), dry.book());
        assertThat(against(job, TrenchWay.BENCH)).isEqualTo(reason == null ? List.of() : List.of(reason));
    }

    /**
     * Type B, 1:1 (Table B-1). Footing top 6 ft down, footing 8 in, its projection 6 in, bottom 24 in: the slope's edge
     * lies 0.5 + 2 + 6.667 = 9.167 ft from the wall; footing and shield fill 2.5 ft.
     */
    @ParameterizedTest(name = "{0} ft of room: slope {1}, shield {2}")
    @CsvSource({"9.2, , ", "9.1, NO_ROOM, ", "2.5, NO_ROOM, ", "2.4, NO_ROOM, NO_ROOM_FOR_SHIELD"})
    void slopeAndShieldNeedTheirRoom(double room, Reason slope, Reason shield) {
        Case job = job(SoilType.B, Texture.CLAY, 6, Optional.of(Length.ofFeet(room)));
        assertThat(against(job, TrenchWay.SLOPE)).isEqualTo(slope == null ? List.of() : List.of(slope));
        assertThat(against(job, TrenchWay.SHIELD)).isEqualTo(shield == null ? List.of() : List.of(shield));
        assertThat(against(job, TrenchWay.HAND)).isEqualTo(shield == null ? List.of() : List.of(shield));
    }

    /** 29 CFR 1926.652(b), App. F: over 20 ft an engineer designs it. The footing is 8 in thick. */
    @ParameterizedTest
    @EnumSource
    void nothingIsOfferedOverTwentyFeet(TrenchWay way) {
        assertThat(against(job(SoilType.B, Texture.CLAY, 19 + 4.1 / 12, Optional.empty()), way))
                .containsExactly(Reason.ENGINEER);
        assertThat(against(job(SoilType.B, Texture.CLAY, 19 + 4.0 / 12, Optional.empty()), way))
                .isEmpty();
    }

    @Test
    void onlyWhatMayBeDoneIsOffered() {
        TrenchChoices choices = TrenchChoices.of(job(SoilType.C, Texture.CLAY, 6, Optional.of(Length.ofFeet(4))));
        assertThat(choices.all()).hasSize(4);
        assertThat(choices.all().stream().filter(TrenchChoice::isOffered).map(TrenchChoice::way))
                .containsExactly(TrenchWay.SHIELD, TrenchWay.HAND);
        assertThat(choices.cheapest().orElseThrow().way()).isEqualTo(TrenchWay.SHIELD);
        TrenchChoices none = TrenchChoices.of(job(SoilType.C, Texture.CLAY, 6, Optional.of(Length.ofFeet(2))));
        assertThat(none.cheapest()).isEmpty();
    }

    /** A slope moves more soil than a shield, steps less than the slope behind which they lie; 1.5:1 more than 1:1. */
    @Test
    void soilFollowsTheBank() {
        TrenchChoices b = TrenchChoices.of(job(SoilType.B, Texture.CLAY, 6, Optional.empty()));
        TrenchChoices c = TrenchChoices.of(job(SoilType.C, Texture.CLAY, 6, Optional.empty()));
        assertThat(soil(b, TrenchWay.SHIELD)).isLessThan(soil(b, TrenchWay.BENCH));
        assertThat(soil(b, TrenchWay.BENCH)).isLessThan(soil(b, TrenchWay.SLOPE));
        assertThat(soil(b, TrenchWay.SLOPE)).isLessThan(soil(c, TrenchWay.SLOPE));
        assertThat(soil(b, TrenchWay.SHIELD)).isEqualTo(soil(c, TrenchWay.SHIELD));
        assertThat(soil(b, TrenchWay.HAND)).isEqualTo(soil(b, TrenchWay.SLOPE));
    }

    private static double soil(TrenchChoices choices, TrenchWay way) {
        return choices.all().get(way.ordinal()).priced().orElseThrow().soil().doubleValue();
    }

    /** What closes the trench at its ends stays whatever the way. */
    @Test
    void endsOfTheTrenchStay() {
        Wall wall = Jobs.protectedBy(Jobs.deep(6), Protection.SLOPED);
        Digging d = wall.digging();
        TrenchEnds closed = new TrenchEnds(EndKind.AGAINST_SOMETHING, EndKind.SHIELDED, Optional.empty());
        Wall between =
                wall.withDigging(new Digging(d.access(), d.handShare(), d.bottomWidth(), d.protection(), closed));
        Case asItIs = new Case(Jobs.job(between), Books.company(), Books.standard());
        for (TrenchWay way : TrenchWay.values()) {
            assertThat(asItIs.dug(way).job().walls().get(0).digging().ends()).isEqualTo(closed);
        }
        assertThat(TrenchChoices.of(asItIs).all().get(0).priced().orElseThrow().price())
                .isEqualTo(asItIs.quote().total());
    }

    /** What {@code price --with protection=shield} prints. */
    @ParameterizedTest
    @EnumSource
    void priceWithTheSameProtectionIsTheSame(TrenchWay way) {
        Bid bid = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"));
        Case job = new Case(
                bid.dossier().job(), bid.dossier().company(), bid.dossier().book());
        List<List<String>> rows =
                WhatIf.beside(bid, List.of("protection=" + way.word())).rows();
        String total = rows.stream()
                .filter(row -> row.get(0).equals("Total"))
                .findFirst()
                .orElseThrow()
                .get(2);
        assertThat(TrenchChoices.of(job)
                        .all()
                        .get(way.ordinal())
                        .priced()
                        .orElseThrow()
                        .price()
                        .text())
                .isEqualTo(total);
    }

    /**
     * A price is no leave to dig so: beside one for a trench over 5 ft without support stands that it is stopped
     * (29 CFR 1926.652(a)(1)); beside a lawful one nothing does.
     */
    @ParameterizedTest(name = "protection={0}: {1} walls stopped")
    @CsvSource({"upright, 2", "shielded, 0", "sloped, 0"})
    void unlawfulWayIsPricedWithItsStops(String way, int stopped) {
        Bid bid = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"));
        List<String> lines =
                WhatIf.sideBySide(bid, List.of("protection=" + way)).out();
        assertThat(lines)
                .filteredOn(line -> line.startsWith("protection=" + way + ": STOP upright-too-deep"))
                .hasSize(stopped);
        assertThat(lines)
                .filteredOn(line -> line.startsWith("Stops it would bring"))
                .hasSize(stopped > 0 ? 1 : 0);
    }

    @Test
    void jobThatIsDugThatWayAlreadyCostsWhatItCosts() {
        Bid bid = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"));
        Case job = new Case(
                bid.dossier().job(), bid.dossier().company(), bid.dossier().book());
        assertThat(TrenchChoices.of(job).all().get(0).priced().orElseThrow().price())
                .isEqualTo(bid.quote().total());
    }

    @Test
    void uprightTrenchUnderFiveFeetNeedsNoWay() {
        Wall shallow = Jobs.protectedBy(Jobs.deep(3), Protection.UPRIGHT);
        assertThat(TrenchLaw.needsWay(shallow)).isFalse();
        assertThat(TrenchLaw.needsWay(Jobs.protectedBy(Jobs.deep(4.4), Protection.UPRIGHT)))
                .isTrue();
        assertThat(TrenchChoices.of(new Case(Jobs.job(shallow), Books.company(), Books.standard()))
                        .all())
                .isEmpty();
    }
}
