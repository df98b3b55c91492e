// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.LimitKind;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
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

    /** 29 CFR 1926.652(b), App. B: from 20 ft an engineer designs it. */
    @ParameterizedTest
    @EnumSource
    void nothingIsOfferedFromTwentyFeet(TrenchWay way) {
        assertThat(against(job(SoilType.B, Texture.CLAY, 19.4, Optional.empty()), way))
                .containsExactly(Reason.ENGINEER);
        assertThat(against(job(SoilType.B, Texture.CLAY, 19.2, Optional.empty()), way))
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

    /** A slope moves more soil than a shield and less than benches behind it; 1.5:1 more than 1:1. */
    @Test
    void soilFollowsTheBank() {
        TrenchChoices b = TrenchChoices.of(job(SoilType.B, Texture.CLAY, 6, Optional.empty()));
        TrenchChoices c = TrenchChoices.of(job(SoilType.C, Texture.CLAY, 6, Optional.empty()));
        assertThat(soil(b, TrenchWay.SHIELD)).isLessThan(soil(b, TrenchWay.SLOPE));
        assertThat(soil(b, TrenchWay.SLOPE))
                .isLessThan(soil(b, TrenchWay.BENCH))
                .isLessThan(soil(c, TrenchWay.SLOPE));
        assertThat(soil(b, TrenchWay.SHIELD)).isEqualTo(soil(c, TrenchWay.SHIELD));
        assertThat(soil(b, TrenchWay.HAND)).isEqualTo(soil(b, TrenchWay.SLOPE));
    }

    private static double soil(TrenchChoices choices, TrenchWay way) {
        return choices.all().get(way.ordinal()).priced().orElseThrow().soil().doubleValue();
    }

    /**
     * Worked by hand: 40 ft, 8 ft deep, 1:1, two steps of 4 ft: 40 × (2 × 16) ÷ 2 ÷ 27 = 23.704 cy; 9 ft
     * adds 20 ÷ 27.
     */
    @ParameterizedTest(name = "{0} ft to the footing top: {1} cy")
    @CsvSource({"7.333333, 23.704", "8.333333, 24.444"})
    void benchesCutTrianglesBehindTheSlope(double feet, double yards) {
        Wall wall = Jobs.deep(feet).withLength(Length.ofFeet(40));
        assertThat(Benches.of(wall, 1).number()).isCloseTo(yards, within(0.01));
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
