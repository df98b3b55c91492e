package spadework.intake;

import java.math.BigDecimal;
import spadework.job.Catchment;
import spadework.job.House;
import spadework.job.LimitKind;
import spadework.job.Rain;
import spadework.job.Seepage;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Space;
import spadework.job.Texture;

/** Reads the house and its ground. */
final class SiteReader {
    static final Kind<Site> SITE = Kind.object(SiteReader::site);

    private static final Limits<BigDecimal> SHARE =
            Limits.above(BigDecimal.ZERO, BigDecimal.ONE, BigDecimal::toPlainString);

    private SiteReader() {}

    private static Site site(Fields fields) {
        return new Site(
                fields.get("address", Addresses.ADDRESS),
                fields.find("yearBuilt", Counts.between(1600, 2199)),
                fields.get("space", Choices.of(Space.class)),
                fields.get("house", Kind.object(SiteReader::house)),
                fields.find("benchmark", Texts.TEXT),
                fields.find("insideFloor", Measures.LEVEL),
                fields.get("soil", Kind.object(SiteReader::soil)),
                fields.find("rain", Kind.object(SiteReader::rain)),
                fields.list("limits", Kind.object(SiteReader::limit)),
                fields.find("locateTicket", Texts.LABEL),
                fields.find("catchment", Kind.object(SiteReader::catchment)));
    }

    private static House house(Fields fields) {
        return new House(
                fields.get("eastWest", Measures.lengthUpTo(1000)), fields.get("northSouth", Measures.lengthUpTo(1000)));
    }

    private static Soil soil(Fields fields) {
        return new Soil(
                fields.get("texture", Choices.of(Texture.class)),
                fields.get("seepage", Choices.of(Seepage.class)),
                fields.get("type", Choices.of(SoilType.class), SoilType.NOT_CLASSED));
    }

    private static Rain rain(Fields fields) {
        return new Rain(fields.get("intensity", Measures.RAIN), fields.get("source", Texts.TEXT));
    }

    private static Catchment catchment(Fields fields) {
        return new Catchment(
                fields.get("area", Measures.areaUpTo(10_000_000)),
                fields.get("runoff", Counts.ratio(SHARE)),
                fields.get("into", Texts.LABEL),
                fields.get("note", Texts.TEXT, ""));
    }

    private static SiteLimit limit(Fields fields) {
        return new SiteLimit(
                fields.get("kind", Choices.of(LimitKind.class)),
                fields.get("wall", Texts.LABEL),
                fields.get("distance", Measures.lengthFromZeroTo(1000)),
                fields.find("trunk", Measures.lengthUpTo(15)),
                fields.get("note", Texts.TEXT, ""));
    }
}
