// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Addresses;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Counts;
import spadework.intake.value.Limits;
import spadework.intake.value.Measures;
import spadework.job.Catchment;
import spadework.job.House;
import spadework.job.LimitKind;
import spadework.job.LocateTicket;
import spadework.job.Rain;
import spadework.job.Seepage;
import spadework.job.Side;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Space;
import spadework.job.TestPit;
import spadework.job.Texture;
import spadework.job.WayIn;
import spadework.job.WayInKind;

/** Reads the house and its ground. */
public final class SiteReader {
    static final ValueKind<Site> SITE = ValueKind.object(SiteReader::site);

    private static final Limits<BigDecimal> SHARE =
            Limits.above(BigDecimal.ZERO, BigDecimal.ONE, BigDecimal::toPlainString);

    private SiteReader() {}

    private static Site site(ObjectFields fields) {
        return new Site(
                fields.get("address", Addresses.ADDRESS),
                fields.find("yearBuilt", Counts.between(1600, 2199)),
                fields.get("space", Choices.of(Space.class)),
                fields.get("house", ValueKind.object(SiteReader::house)),
                fields.find("benchmark", Texts.TEXT),
                fields.find("insideFloor", Measures.LEVEL),
                fields.get("soil", ValueKind.object(SiteReader::soil)),
                fields.find("rain", ValueKind.object(SiteReader::rain)),
                fields.list("limits", ValueKind.object(SiteReader::limit)),
                ticket(fields),
                fields.find("catchment", ValueKind.object(SiteReader::catchment)),
                fields.list("testPits", ValueKind.object(SiteReader::testPit)));
    }

    private static Optional<LocateTicket> ticket(ObjectFields fields) {
        Optional<String> number = fields.find("locateTicket", Texts.LABEL);
        Optional<LocalDate> until = fields.find("locateUntil", CalendarDates.DATE);
        if (fields.node().at("locateUntil").json() != null
                && fields.node().at("locateTicket").json() == null) {
            fields.node()
                    .fault(
                            "\"locateUntil\" without \"locateTicket\"",
                            "the last day of a ticket beside its number",
                            "add \"locateTicket\"");
        }
        return number.map(ticket -> new LocateTicket(ticket, until));
    }

    private static TestPit testPit(ObjectFields fields) {
        return new TestPit(
                fields.get("label", Texts.LABEL),
                fields.find("wall", Texts.LABEL),
                fields.get("length", Measures.lengthUpTo(100)),
                fields.get("width", Measures.lengthUpTo(100)),
                fields.get("depth", Measures.lengthUpTo(20)));
    }

    private static House house(ObjectFields fields) {
        return new House(
                fields.get("eastWest", Measures.lengthUpTo(1000)),
                fields.get("northSouth", Measures.lengthUpTo(1000)),
                fields.find("front", Choices.of(Side.class)),
                fields.find("door", Measures.lengthUpTo(1000)),
                fields.find("wayIn", ValueKind.object(SiteReader::wayIn)));
    }

    private static WayIn wayIn(ObjectFields fields) {
        return new WayIn(fields.get("by", Choices.of(WayInKind.class)), fields.get("door", Texts.LABEL));
    }

    private static Soil soil(ObjectFields fields) {
        return new Soil(
                fields.get("texture", Choices.of(Texture.class)),
                fields.get("seepage", Choices.of(Seepage.class)),
                fields.get("type", Choices.of(SoilType.class), SoilType.NOT_CLASSED));
    }

    private static Rain rain(ObjectFields fields) {
        return new Rain(fields.get("intensity", Measures.RAIN), fields.get("source", Texts.TEXT));
    }

    private static Catchment catchment(ObjectFields fields) {
        return new Catchment(
                fields.get("area", Measures.areaUpTo(10_000_000)),
                fields.get("runoff", Counts.ratio(SHARE)),
                fields.get("into", Texts.LABEL),
                fields.get("note", Texts.TEXT, ""));
    }

    private static SiteLimit limit(ObjectFields fields) {
        return new SiteLimit(
                fields.get("kind", Choices.of(LimitKind.class)),
                fields.get("wall", Texts.LABEL),
                fields.get("distance", Measures.lengthFromZeroTo(1000)),
                fields.find("trunk", Measures.lengthUpTo(15)),
                fields.get("note", Texts.TEXT, ""));
    }
}
