// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.drawing.shape.Scene;
import spadework.job.Observation;
import spadework.money.Dollars;
import spadework.paperwork.cost.CostBook;
import spadework.paperwork.cost.CostBuildUp;
import spadework.paperwork.cost.CostNotes;
import spadework.paperwork.cost.CostPrice;
import spadework.paperwork.cost.CostSheet;
import spadework.paperwork.cost.CostSheetLine;
import spadework.paperwork.cost.CostSheetSection;
import spadework.paperwork.cost.CostSupplies;
import spadework.paperwork.cost.CrewRow;
import spadework.paperwork.cost.LineAmount;
import spadework.paperwork.cost.LineParts;
import spadework.paperwork.cost.PriceStep;
import spadework.paperwork.cost.PurchaseRow;
import spadework.paperwork.part.AgreedParts;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.Firm;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.PaymentRow;
import spadework.paperwork.part.PriceRow;
import spadework.paperwork.part.UnitPriceRow;
import spadework.paperwork.part.WarrantyPromise;
import spadework.paperwork.part.WarrantyRow;
import spadework.paperwork.part.WorkConditions;
import spadework.paperwork.part.WorkSchedule;
import spadework.paperwork.proposal.Offer;
import spadework.paperwork.proposal.Proposal;
import spadework.paperwork.proposal.ProposalFound;
import spadework.paperwork.proposal.ProposalPrice;
import spadework.paperwork.proposal.ProposalWork;
import spadework.paperwork.scope.ScopeOfWork;
import spadework.paperwork.scope.ScopeSite;
import spadework.paperwork.scope.ScopeWater;
import spadework.paperwork.warranty.WarrantyCertificate;
import spadework.paperwork.work.FinishWork;
import spadework.paperwork.work.FootingWork;
import spadework.paperwork.work.MeasuredRow;
import spadework.paperwork.work.OpeningWork;
import spadework.paperwork.work.OutletWork;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.SurfaceWork;
import spadework.paperwork.work.TrenchWork;
import spadework.paperwork.work.WallWork;
import spadework.press.page.PageInfo;

/**
 * One invented job on paper: two walls, two runs, seven lines with odd and half cents.
 *
 * <p>The figures hang together. Unit prices are near 1.5 times direct cost a unit: contingency 10%,
 * overhead 20%, margin 12% (1.10 × 1.20 ÷ 0.88 = 1.5). Sections round half up to whole dollars.
 */
public final class PaperworkFixtures {
    public static final LocalDate ISSUED = LocalDate.of(2026, 3, 3);

    private PaperworkFixtures() {}

    static Map<String, Object> model() {
        return Map.of("proposal", proposal(), "scope", scope(), "certificate", certificate(), "sheet", sheet());
    }

    /** What a page of the document is given: its record and no drawing. */
    static Map<String, Object> pageModel(String document) {
        return Map.of(
                document,
                model().get(document),
                "plan",
                "",
                "info",
                new PageInfo("en-US", "Fernhill Earthworks LLC", ISSUED));
    }

    static PaperHead head() {
        return head("Dry walls for the Alder Lane house");
    }

    static PaperHead head(String jobTitle) {
        Firm firm = new Firm(
                "Fernhill Earthworks LLC",
                "Contractor registration",
                "FH-0000-17",
                "Invented Mutual, policy 00-1234, $1,000,000 an occurrence, to December 31, 2026",
                "12 Quarry Road, Millbrook, PA 00000",
                "(215) 555-0134",
                "office@fernhill.example.com",
                "Cole Marsh",
                "(215) 555-0135",
                Optional.empty(),
                false);
        return new PaperHead(
                firm,
                "2026-014",
                jobTitle,
                "March 3, 2026",
                "2026-03-03",
                "April 2, 2026",
                List.of("Ada Harrow", "Ben Harrow"),
                "(215) 555-0177, harrow@example.com",
                "48 Alder Lane, Millbrook, PA 00000",
                false);
    }

    static Proposal proposal() {
        return proposal(head(), "Wall A, back wall");
    }

    /** The same proposal with other words of the customer's in it. */
    static Proposal proposal(PaperHead head, String firstSection) {
        return new Proposal(
                head,
                scene(),
                new ProposalFound(
                        List.of(new Observation(
                                "water stands along the back wall after rain",
                                "tide mark 4 in above the floor",
                                "the old coating has flaked and nothing drains the footing",
                                "strip, coat and drain the wall",
                                List.of())),
                        List.of("Damp that comes through the floor slab"),
                        List.of()),
                new ProposalWork(walls(), runs(), outlets(), ""),
                new ProposalPrice(
                        List.of(
                                new PriceRow(
                                        firstSection,
                                        "digging, stripping, cleaning, coating, backfill in lifts, for 46 ft 6 "
                                                + "in of wall",
                                        Dollars.of("6844.00")),
                                new PriceRow(
                                        "Wall B, kitchen side",
                                        "the same for 22 ft of wall, part of it by hand",
                                        Dollars.of("3052.00")),
                                new PriceRow(
                                        "Footing drain and outlet",
                                        "pipe, stone, fabric, solid main",
                                        Dollars.of("2387.00"))),
                        Dollars.of("12283.00"),
                        Dollars.of("767.69"),
                        "6.25%",
                        Dollars.of("13050.69"),
                        "Fernhill 2026, January 15, 2026",
                        List.of(
                                new UnitPriceRow(
                                        "Rock", "stone that the machine cannot lift", "cy", Dollars.of("187.35")),
                                new UnitPriceRow(
                                        "Extra wall",
                                        "a further foot of wall at the same depth",
                                        "ft",
                                        Dollars.of("164.05")))),
                new WorkConditions(
                        List.of(
                                "Permit for the outlet",
                                "Boards over lawn and walk, plants behind a fence",
                                "Seed and straw where the machine has been"),
                        List.of("Repairs inside the house", "Moving of the gas meter"),
                        List.of("No rock within the depth of the footing", "The side gate can be taken off"),
                        List.of("Plywood on the walk"),
                        List.of("Move the cars out of the drive", "Clear 3 ft along the basement wall inside"),
                        List.of("Changes are agreed in writing before the work.")),
                new WorkSchedule(
                        "April 6, 2026", "April 17, 2026", 8, true, "Two dry days are needed before the coating."),
                payments(),
                promise(),
                notes(),
                Offer.NONE,
                FlatPapers.ANSWER);
    }

    /** The barest proposal: one section, one payment, no tax, no unit prices, A4, a warranty in force. */
    static Proposal bareProposal() {
        Firm letter = head().firm();
        Firm a4 = new Firm(
                letter.name(),
                letter.licenseLabel(),
                letter.licenseNumber(),
                letter.insurance(),
                letter.address(),
                letter.phone(),
                letter.email(),
                letter.callName(),
                letter.callPhone(),
                Optional.empty(),
                true);
        PaperHead head = new PaperHead(
                a4,
                "2026-015",
                "One wall",
                "March 3, 2026",
                "2026-03-03",
                "April 2, 2026",
                List.of("Ada Harrow"),
                "",
                "48 Alder Lane, Millbrook, PA 00000",
                true);
        WarrantyPromise inForce = new WarrantyPromise(
                false,
                List.of(new WarrantyRow("Wall coating", "no water", 10, "April 18, 2026", "April 17, 2036")),
                5,
                10,
                5,
                30,
                0,
                0,
                List.of(),
                List.of());
        return new Proposal(
                head,
                scene(),
                new ProposalFound(List.of(), List.of(), List.of()),
                new ProposalWork(List.of(), List.of(), List.of(), ""),
                new ProposalPrice(
                        List.of(new PriceRow("Wall A", "", d("985.00"))),
                        d("985.00"),
                        Dollars.ZERO,
                        "0%",
                        d("985.00"),
                        "Fernhill 2026, January 15, 2026",
                        List.of()),
                new WorkConditions(List.of(), List.of("Repairs inside"), List.of(), List.of(), List.of(), List.of()),
                new WorkSchedule("April 6, 2026", "April 7, 2026", 2, false, ""),
                List.of(new PaymentRow(1, "at the end", "100%", BigDecimal.ONE, true, d("985.00"))),
                inForce,
                List.of(),
                Offer.NONE,
                FlatPapers.ANSWER);
    }

    /**
     * A small job with a markup, a step of $5, a minimum, and names of sections that a sum by name would
     * take for rules.
     */
    static CostSheet bareSheet() {
        String any = "*";
        String more = ">0";
        return new CostSheet(
                head(),
                new CostBook("Fernhill 2026", "January 15, 2026"),
                List.of(
                        line(
                                "A", "First", any, "10", "ft", "10.0 ft", "0", "0", "100.00", "0", "0", "0", "100.00",
                                "c", "1", "18.75", "187.50"),
                        line(
                                "B", "Second", more, "1", "ea", "1 ea", "0", "0", "50.00", "0", "0", "0", "50.00", "c",
                                "1", "82.50", "82.50")),
                List.of(
                        new CostSheetSection(any, d("100.00"), d("187.50"), d("2.50"), d("190.00")),
                        new CostSheetSection(more, d("50.00"), d("82.50"), d("2.50"), d("85.00"))),
                new CostBuildUp(
                        d("150.00"),
                        List.of(),
                        new BigDecimal("0.1"),
                        new BigDecimal("0.2"),
                        new BigDecimal("0.125"),
                        false,
                        new BigDecimal("5.00"),
                        d("710.00")),
                new CostPrice(d("985.00"), Dollars.ZERO, d("985.00"), Dollars.of("1474.42"), "79.9%"),
                List.of(new PaymentRow(1, "at the end", "100%", BigDecimal.ONE, true, d("985.00"))),
                new CostSupplies(List.of(), List.of()),
                List.of(),
                new CostNotes(List.of(), List.of(), List.of()),
                Optional.empty(),
                Optional.empty());
    }

    static ScopeOfWork scope() {
        return new ScopeOfWork(
                head(),
                scene(),
                PageFixtures.steps(),
                walls(),
                runs(),
                outlets(),
                new ScopeWater(true, false, List.of(), List.of()),
                List.of(measured("drain.pipe", "Footing drain", "Perforated pipe", "72.5", "ft", "72.5 ft")),
                new ScopeSite("", "silty clay, taken as Type C", "Local code and the competent person on site govern."),
                List.of("Plywood on the walk"),
                notes(),
                AgreedParts.NONE);
    }

    static WarrantyCertificate certificate() {
        return new WarrantyCertificate(
                head(), "W-2026-014", scene(), promise(), walls(), runs(), "Pennsylvania", List.of());
    }

    static CostSheet sheet() {
        return new CostSheet(
                head(),
                new CostBook("Fernhill 2026", "January 15, 2026"),
                lines(),
                List.of(
                        new CostSheetSection("Wall A, back wall", d("4562.35"), d("6843.53"), d("0.47"), d("6844.00")),
                        new CostSheetSection(
                                "Wall B, kitchen side", d("2034.33"), d("3051.50"), d("0.50"), d("3052.00")),
                        new CostSheetSection(
                                "Footing drain and outlet", d("1591.64"), d("2387.45"), d("-0.45"), d("2387.00"))),
                new CostBuildUp(
                        d("8188.32"),
                        List.of(
                                step("Direct cost", "sum of the lines", "", "8188.32", "$8,188.32"),
                                step(
                                        "With contingency",
                                        "direct × (1 + c)",
                                        "8,188.32 × (1 + 0.1)",
                                        "9007.152",
                                        "$9,007.15"),
                                step(
                                        "With overhead",
                                        "cost × (1 + o)",
                                        "9,007.152 × (1 + 0.2)",
                                        "10808.5824",
                                        "$10,808.58"),
                                step("Price", "cost ÷ (1 − m)", "10,808.5824 ÷ (1 − 0.12)", "12282.48", "$12,282.48")),
                        new BigDecimal("0.1"),
                        new BigDecimal("0.2"),
                        new BigDecimal("0.12"),
                        true,
                        new BigDecimal("1.00"),
                        Dollars.ZERO),
                new CostPrice(d("12283.00"), d("767.69"), d("13050.69"), Dollars.of("1474.42"), "12.0%"),
                payments(),
                new CostSupplies(
                        List.of(
                                new PurchaseRow(
                                        "COAT-RUB",
                                        "Liquid rubber",
                                        "51.4 gal",
                                        "25%",
                                        new BigDecimal("13"),
                                        "5 gal pail",
                                        "ceil(51.4 × 1.25 ÷ 5) = 13",
                                        Optional.empty()),
                                new PurchaseRow(
                                        "PIPE-PERF",
                                        "Perforated pipe",
                                        "72.5 ft",
                                        "5%",
                                        new BigDecimal("8"),
                                        "10 ft stick",
                                        "ceil(72.5 × 1.05 ÷ 10) = 8",
                                        Optional.empty())),
                        List.of(
                                new CrewRow(
                                        "digging",
                                        "1 operator, 1 labourer",
                                        new BigDecimal("21.3"),
                                        new BigDecimal("2.7")),
                                new CrewRow("coating", "2 labourers", new BigDecimal("25.0"), new BigDecimal("3.1")))),
                List.of(
                        measured("A.dig-machine", "Wall A, back wall", "Dig by machine", "46.5", "cy", "46.5 cy"),
                        measured("A.coat", "Wall A, back wall", "Wall to coat", "1234", "sf", "1,234 sf")),
                new CostNotes(List.of(), notes(), List.of("Ask the neighbour about the fence before Monday.")),
                Optional.empty(),
                Optional.empty());
    }

    /** Half cents that go up: 46.5 × 57.57 = 2,677.005, 1.5 × 5.29 = 7.935, 17.5 × 174.37 = 3,051.475. */
    static List<CostSheetLine> lines() {
        String a = "Wall A, back wall";
        String b = "Wall B, kitchen side";
        String drain = "Footing drain and outlet";
        return List.of(
                line(
                        "DIG-MACH",
                        "Dig by machine",
                        a,
                        "46.5",
                        "cy",
                        "46.5 cy",
                        "0",
                        "0",
                        "980.11",
                        "804.52",
                        "0",
                        "0",
                        "1784.63",
                        "digging",
                        "14.3",
                        "57.57",
                        "2677.01"),
                line(
                        "COAT-RUB",
                        "Coat with liquid rubber",
                        a,
                        "1234",
                        "sf",
                        "1,234 sf",
                        "1300.00",
                        "78.00",
                        "1396.20",
                        "0",
                        "0",
                        "0",
                        "2774.20",
                        "coating",
                        "25.0",
                        "3.37",
                        "4158.58"),
                line(
                        "SEAL-TIE",
                        "Seal a tie",
                        a,
                        "1.5",
                        "ft",
                        "1.5 ft",
                        "0.52",
                        "0.03",
                        "2.97",
                        "0",
                        "0",
                        "0",
                        "3.52",
                        "coating",
                        "0",
                        "5.29",
                        "7.94"),
                line(
                        "DIG-HAND",
                        "Dig by hand",
                        b,
                        "17.5",
                        "cy",
                        "17.5 cy",
                        "0",
                        "0",
                        "2034.33",
                        "0",
                        "0",
                        "0",
                        "2034.33",
                        "digging",
                        "7.0",
                        "174.37",
                        "3051.48"),
                line(
                        "FABRIC",
                        "Fabric, odd piece",
                        b,
                        "1.5",
                        "sy",
                        "1.5 sy",
                        "0",
                        "0",
                        "0",
                        "0",
                        "0",
                        "0",
                        "0",
                        "",
                        "0",
                        "0.01",
                        "0.02"),
                line(
                        "PIPE-PERF",
                        "Perforated pipe in stone",
                        drain,
                        "72.5",
                        "ft",
                        "72.5 ft",
                        "611.11",
                        "36.67",
                        "843.86",
                        "0",
                        "60.00",
                        "40.00",
                        "1591.64",
                        "digging",
                        "0",
                        "32.93",
                        "2387.43"),
                line(
                        "GUARD",
                        "Outlet guard",
                        drain,
                        "1",
                        "ea",
                        "1 ea",
                        "0",
                        "0",
                        "0",
                        "0",
                        "0",
                        "0",
                        "0",
                        "",
                        "0",
                        "0.02",
                        "0.02"));
    }

    static List<PaymentRow> payments() {
        return List.of(
                new PaymentRow(1, "at signing", "10%", new BigDecimal("0.1"), false, d("1305.06")),
                new PaymentRow(
                        2,
                        "when the walls are coated and shown to you",
                        "33.3%",
                        new BigDecimal("0.333"),
                        false,
                        d("4345.87")),
                new PaymentRow(3, "when the flow test has run", "35%", new BigDecimal("0.35"), false, d("4567.74")),
                new PaymentRow(4, "when the ground is seeded", "21.7%", new BigDecimal("0.217"), true, d("2832.02")));
    }

    static WarrantyPromise promise() {
        return new WarrantyPromise(
                true,
                List.of(
                        new WarrantyRow("Wall coating", "no water through the coated length of wall", 10, "", ""),
                        new WarrantyRow("Footing drain", "carries water to its outlet", 5, "", "")),
                5,
                10,
                5,
                30,
                1,
                30,
                List.of("Water over the top of a window well", "Walls that are not listed"),
                List.of("Clean the gutters in spring and autumn", "Keep the outlet free of leaves"));
    }

    static List<WallWork> walls() {
        return List.of(wall("A", "back wall, garden side"), wall("B", "kitchen side"));
    }

    private static WallWork wall(String label, String where) {
        return new WallWork(
                label,
                where,
                "north",
                "concrete block",
                "46 ft 6 in",
                "5 ft to 6 ft",
                new TrenchWork(
                        "6 ft 8 in",
                        "24 in",
                        "sloped",
                        "1.5",
                        true,
                        "15%",
                        List.of("property line 11 ft from the wall")),
                new FootingWork("8 in", "6 in"),
                new SurfaceWork(List.of("flaking dampproofing"), "12 ft", true),
                new OpeningWork(1, List.of("window 32 in × 20 in")),
                new FinishWork(
                        "coating", "liquid synthetic rubber", "waterproofing", "60 mil", "86 mil", 2, "60 mil", true),
                List.of(measured(label + ".dig-machine", "Wall " + label, "Dig by machine", "46.5", "cy", "46.5 cy")));
    }

    private static List<PipeWork> runs() {
        return List.of(
                new PipeWork(
                        "Drain 1",
                        "drain",
                        "4 in perforated PVC, holes down",
                        "72.5 ft",
                        "94.35 ft to 93.60 ft, fall 1.0%",
                        "Main 1",
                        "the footing of walls A and B"),
                new PipeWork(
                        "Main 1",
                        "main",
                        "4 in solid PVC",
                        "38.0 ft",
                        "93.60 ft to 92.90 ft, fall 1.8%",
                        "Outlet 1",
                        "drain 1"));
    }

    private static List<OutletWork> outlets() {
        return List.of(new OutletWork(
                "1", "daylight", "open end with guard at the swale", "92.90 ft", "42 ft", "12 ft", "own ground"));
    }

    private static List<FindingNote> notes() {
        return List.of(
                new FindingNote(
                        "trench-slope",
                        "must",
                        "A",
                        List.of("A"),
                        "The trench is 6 ft 8 in deep in Type C soil.",
                        "Slope the bank at 1 1/2 ft out for each foot up or use a shield.",
                        "29 CFR 1926 Subpart P App. B Table B-1 (T-09)",
                        ""),
                new FindingNote(
                        "lot-fall",
                        "advise",
                        "",
                        List.of(""),
                        "The soil falls toward the house.",
                        "Grade 6 in over the first 10 ft.",
                        "IRC R401.3 (F-22)",
                        ""));
    }

    private static MeasuredRow measured(
            String id, String section, String what, String value, String unit, String text) {
        return new MeasuredRow(
                id,
                section,
                what,
                new BigDecimal(value),
                unit,
                text,
                "L × (A0 + 4 × Am + A1) ÷ 6 ÷ 27 = 46.5 × (24 + 4 × 27.1 + 30.3) ÷ 6 ÷ 27 = " + text,
                "L 46.5 ft from /walls/0/length; A0 24 sf; Am 27.1 sf; A1 30.3 sf",
                "Simpson's rule, exact for a quadratic section");
    }

    private static CostSheetLine line(
            String code,
            String name,
            String section,
            String quantity,
            String unit,
            String text,
            String material,
            String tax,
            String labor,
            String machine,
            String sub,
            String disposal,
            String direct,
            String crew,
            String hours,
            String unitPrice,
            String price) {
        return new CostSheetLine(
                code,
                name,
                section,
                new LineAmount(new BigDecimal(quantity), unit, text),
                "follows the takeoff",
                new LineParts(d(material), d(tax), d(labor), d(machine), d(sub), d(disposal), d(direct)),
                crew,
                new BigDecimal(hours),
                d(unitPrice),
                d(price));
    }

    private static PriceStep step(String name, String formula, String figures, String value, String text) {
        return new PriceStep(name, formula, figures, new BigDecimal(value), text);
    }

    private static Scene scene() {
        return new Scene(10, 10, List.of(), "plan");
    }

    private static Dollars d(String amount) {
        return Dollars.of(amount);
    }
}
