// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
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
import spadework.paperwork.scope.ScopeStep;
import spadework.paperwork.scope.ScopeSteps;
import spadework.paperwork.scope.ScopeWater;
import spadework.paperwork.scope.StepEvidence;
import spadework.paperwork.scope.StepKind;
import spadework.paperwork.scope.WallSteps;
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

/** Rich invented records: two walls with an outside corner, long texts, many rows. No figure here is computed. */
public final class PageFixtures {
    public static final PageInfo INFO = new PageInfo("en-US", "Harrow Lane Drainage LLC", LocalDate.of(2026, 3, 3));

    static final String PLAN = """
            <svg xmlns="http://www.w3.org/2000/svg" width="470pt" height="190pt" viewBox="0 0 470 190"
             font-family="Source Sans 3"
             alt="Plan of the house: wall A along the north side, wall B along the east side.">
            <rect x="150" y="30" width="170" height="120" fill="none" stroke="#000000" stroke-width="0.8"/>
            <path d="M150 30 H320 V150" fill="none" stroke="#000000" stroke-width="3"/>
            <text x="235" y="22" font-size="9" font-weight="bold" text-anchor="middle">Wall A, 46 ft 6 in</text>
            <text x="328" y="92" font-size="9" font-weight="bold">Wall B, 28 ft</text>
            <text x="150" y="182" font-size="9">Not to scale</text>
            </svg>
            """;

    private static final String LOGO = "data:image/png;base64,"
            + "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNwAAAAQgBBKTf07wAAAABJRU5ErkJggg==";

    private static final String STEEP = "29 CFR 1926 Subpart P App. B Table B-1 (T-09)";

    private PageFixtures() {}

    public static Map<String, Object> proposalModel() {
        return model("proposal", proposal(head(false, Optional.empty())));
    }

    static Map<String, Object> proposalOnA4WithLogo() {
        return model("proposal", proposal(head(true, Optional.of(LOGO))));
    }

    static Map<String, Object> scopeModel() {
        return model("scope", scope());
    }

    static Map<String, Object> certificateModel(boolean specimen) {
        return model("certificate", certificate(specimen));
    }

    static Map<String, Object> sheetModel() {
        return model("sheet", sheet());
    }

    public static Map<String, Object> model(String name, Object value) {
        Map<String, Object> model = new HashMap<>();
        model.put(name, value);
        model.put("plan", PLAN);
        return model;
    }

    public static PaperHead head(boolean a4, Optional<String> logo, String... customers) {
        return new PaperHead(
                new Firm(
                        "Harrow Lane Drainage LLC",
                        "Home improvement registration",
                        "HI-00417",
                        "Fieldgate Mutual, policy 55-2210, $1,000,000 each occurrence, until December 31, 2026",
                        "218 Harrow Lane, Wexmoor, OH 44000",
                        "(555) 555-0134",
                        "office@harrowlane.example.com",
                        "Cole Marsh",
                        "(555) 555-0135",
                        logo,
                        a4),
                "2026-014",
                "Keep water out of the basement along walls A and B",
                "March 3, 2026",
                "2026-03-03",
                "April 2, 2026",
                customers.length == 0 ? List.of("Marta Quill", "Anders Quill") : List.of(customers),
                "(555) 555-0177, quill@example.com",
                "41 Tannery Row, Wexmoor, OH 44000",
                false);
    }

    static Scene scene() {
        return new Scene(205, 150, List.of(), "Plan of the house: wall A along the north side, wall B along the east.");
    }

    public static Proposal proposal(PaperHead head) {
        return new Proposal(
                head,
                scene(),
                new ProposalFound(
                        List.of(
                                new Observation(
                                        "Water stands on the basement floor along walls A and B after two days of rain",
                                        "A damp line 3 in high on both walls and loose paint below it; your photos of"
                                                + " 11 January show the puddle",
                                        "the old black coating outside has flaked off and there is no drain "
                                                + "beside the footing",
                                        "A new coat closes the face of the wall, and the drain takes the water "
                                                + "away at the"
                                                + " footing before it can stand against the wall",
                                        List.of("wall-a-1.jpg")),
                                new Observation(
                                        "Two downspouts end within 2 ft of the corner of walls A and B",
                                        "Soil washed out under both outlets, and a wet corner inside straight "
                                                + "below them",
                                        "the roof pours about half its water at the corner where the basement "
                                                + "leaks most",
                                        "Each downspout gets its own solid pipe to the swale, so roof water no "
                                                + "longer reaches"
                                                + " the wall",
                                        List.of()),
                                new Observation(
                                        "The soil beside wall B falls toward the house",
                                        "A level laid on the ground shows 2 in of fall toward the wall in the "
                                                + "first 6 ft",
                                        "the old trench has settled",
                                        "New fill is packed in layers and the surface falls 6 in away from the "
                                                + "house over the"
                                                + " first 10 ft",
                                        List.of())),
                        List.of(
                                "Water that comes up through the floor slab where no wall is dug.",
                                "Damp air in summer, which needs a dehumidifier and not a drain.",
                                "Walls C and D, which are dry today and which we do not touch."),
                        List.of()),
                new ProposalWork(List.of(wall("A", true), wall("B", false)), runs(), outlets(), ""),
                new ProposalPrice(
                        List.of(
                                price(
                                        "Locate and protect",
                                        "Utility marking, fence, mats over the lawn, covers on plants",
                                        "940"),
                                price("Dig", "Machine and hand digging along both walls, soil kept on mats", "4860"),
                                price(
                                        "Clean and repair",
                                        "Stripping, scraping, washing, crack filling, a cove at the footing",
                                        "3120"),
                                price(
                                        "Coat",
                                        "Two coats of liquid synthetic rubber, with a protection board over it",
                                        "5285"),
                                price(
                                        "Drain",
                                        "Perforated pipe in washed stone with fabric over the top, cleanouts",
                                        "4410"),
                                price(
                                        "Carry the water away",
                                        "Solid main to the swale with an animal guard at its end",
                                        "1875"),
                                price("Roof water", "Two downspouts in solid pipe of their own", "1240"),
                                price(
                                        "Backfill and grade",
                                        "Fill in layers, surplus hauled away, surface sloped",
                                        "3670"),
                                price("Restore", "Topsoil, seed and straw on what we dug", "1150"),
                                price("Permit and inspection", "Fee and visits", "325")),
                        Dollars.of("26875.00"),
                        Dollars.of("0"),
                        "",
                        Dollars.of("26875.00"),
                        "Harrow Lane price book, February 1, 2026",
                        List.of(
                                unit(
                                        "Rock",
                                        "Rock that the machine's bucket cannot lift and that must be broken",
                                        "cubic yard",
                                        "185"),
                                unit(
                                        "Buried debris",
                                        "Old concrete, stumps or rubble, with hauling and disposal",
                                        "cubic yard",
                                        "96"),
                                unit(
                                        "Extra depth",
                                        "A footing deeper than measured, for each foot of wall and foot of depth",
                                        "foot by foot",
                                        "31.50"),
                                unit(
                                        "Extra wall",
                                        "Another foot of wall, dug, coated and drained as walls A and B are",
                                        "foot",
                                        "288"))),
                new WorkConditions(
                        List.of(
                                "Utility marking by the one-call center",
                                "Digging, coating, drain and backfill at walls A and B",
                                "Both downspouts in solid pipe to the swale",
                                "Hauling surplus soil and all waste",
                                "Seed and straw on bare soil"),
                        List.of(
                                "Repair of the walk by the driveway beyond the trench",
                                "Inside painting and finishes",
                                "Gutters and roof",
                                "Engineering, if a wall is found to need it",
                                "Watering the new grass"),
                        List.of(
                                "The footing is 8 in thick and stands 6 in out from the wall, as measured at "
                                        + "two test holes.",
                                "The swale is yours to drain into, as your survey shows.",
                                "The machine can reach both walls through the gate on the east side, 8 ft wide."),
                        List.of(
                                "Mats on the lawn along the machine's way.",
                                "A fence around the open trench every night.",
                                "Siding, windows and the cooling unit covered while we wash and coat."),
                        List.of(
                                "Move what stands within 12 ft of walls A and B, inside and out.",
                                "Tell us where sprinkler pipes, dog fences and garden lights run; nobody else "
                                        + "marks them.",
                                "Keep the driveway free from 7 in the morning.",
                                "Keep children and pets away from the trench until the fence is gone."),
                        List.of(
                                "Changes are agreed in writing, with their price, before they are done.",
                                "We hold the permit and call the inspections.",
                                "The site is left raked and free of our waste.")),
                new WorkSchedule(
                        "April 13, 2026",
                        "May 1, 2026",
                        9,
                        true,
                        "Coating waits for a dry wall, so rain moves the dates by as many days"),
                List.of(
                        payment(1, "When you sign the contract", "10%", "0.1", false, "2687.50"),
                        payment(
                                2,
                                "When both walls are dug and you have seen the footing",
                                "30%",
                                "0.3",
                                false,
                                "8062.50"),
                        payment(
                                3,
                                "When the coating is dry and the drain has passed the hose test",
                                "40%",
                                "0.4",
                                false,
                                "10750.00"),
                        payment(
                                4,
                                "When the trench is filled, the grade is set and we have left the site clean",
                                "20%",
                                "0.2",
                                true,
                                "5375.00")),
                promise(true),
                notes(),
                Offer.NONE,
                FlatPapers.ANSWER);
    }

    static WallWork wall(String label, boolean north) {
        return new WallWork(
                label,
                north ? "north side, facing the street" : "east side, facing the drive",
                north ? "north" : "east",
                "concrete block",
                north ? "46 ft 6 in" : "28 ft",
                north ? "5 ft 10 in to 6 ft 8 in" : "6 ft 8 in",
                new TrenchWork(
                        "7 ft 4 in",
                        "24 in",
                        north ? "sloped" : "shielded",
                        north ? "1.5" : "",
                        !north,
                        north ? "20%" : "",
                        north
                                ? List.of()
                                : List.of("Walk 7 ft 6 in from the wall", "Maple, 14 in trunk, 11 ft from the wall")),
                new FootingWork("8 in", "6 in"),
                new SurfaceWork(
                        north
                                ? List.of("Strip old dampproofing", "Strip loose parge")
                                : List.of("Strip old dampproofing"),
                        north ? "14 ft" : "",
                        north),
                new OpeningWork(
                        north ? 1 : 0,
                        north ? List.of("One basement window, 32 in × 16 in, in a window well") : List.of()),
                finish(north),
                List.of(
                        measured("dig-" + label, "Wall " + label, "Soil dug, as it lies", "61.1", "cy"),
                        measured("wash-" + label, "Wall " + label, "Wall to strip, scrape and wash", "322", "sf"),
                        measured("coat-" + label, "Wall " + label, "Coating, both coats", "38", "gal"),
                        measured("stone-" + label, "Wall " + label, "Washed stone", "14.5", "tons"),
                        measured("pipe-" + label, "Wall " + label, "Perforated pipe", "50", "ft")));
    }

    static FinishWork finish(boolean full) {
        return full
                ? new FinishWork(
                        "coating", "liquid synthetic rubber", "waterproofing", "60 mil", "86 mil", 2, "60 mil", true)
                : new FinishWork(
                        "coating", "polymer-modified asphalt", "dampproofing", "30 mil", "46 mil", 1, "40 mil", false);
    }

    static List<PipeWork> runs() {
        return List.of(
                new PipeWork(
                        "D1",
                        "drain",
                        "4 in rigid PVC, perforated, holes down",
                        "78 ft",
                        "93.20 ft to 92.42 ft," + " 1.0% fall",
                        "M1",
                        "ground water along A, B"),
                new PipeWork(
                        "M1", "main", "4 in rigid PVC, solid", "52 ft", "92.42 ft to 91.38 ft, 2.0% fall", "O1", "D1"),
                new PipeWork("R1", "roof line", "4 in rigid PVC, solid", "64 ft", "", "O1", "downspouts 1 and 2"));
    }

    static List<OutletWork> outlets() {
        return List.of(new OutletWork(
                "O1",
                "daylight",
                "The pipe ends in the swale, with a guard against animals",
                "91.38 ft",
                "58 ft",
                "14 ft",
                "The swale is on your own lot"));
    }

    static WarrantyPromise promise(boolean specimen) {
        return new WarrantyPromise(
                specimen,
                List.of(
                        new WarrantyRow(
                                "Coating on walls A and B",
                                "No water comes through the coated face of the wall",
                                15,
                                specimen ? "" : "May 1, 2026",
                                specimen ? "" : "April 30, 2041"),
                        new WarrantyRow(
                                "Footing drain and solid main",
                                "The pipe carries water and does not settle or" + " break",
                                5,
                                specimen ? "" : "May 1, 2026",
                                specimen ? "" : "April 30, 2031"),
                        new WarrantyRow(
                                "Grade over the trench",
                                "Settlement of more than 2 in is filled again",
                                2,
                                specimen ? "" : "May 1, 2026",
                                specimen ? "" : "April 30, 2028")),
                5,
                10,
                5,
                30,
                1,
                60,
                List.of(
                        "Water through the floor slab or through walls C and D.",
                        "Water that enters above the finished grade, as through a window.",
                        "Damage from digging, planting or building beside the wall by others.",
                        "Flood, which covers the ground beside the house."),
                List.of(
                        "Clean the gutters twice a year.",
                        "Keep the soil falling away from the house.",
                        "Keep the outlet in the swale open, and look at it every spring.",
                        "Tell us before anyone digs within 4 ft of walls A and B."));
    }

    static List<FindingNote> notes() {
        return List.of(
                new FindingNote(
                        "trench-slope",
                        "must",
                        "A",
                        List.of("A"),
                        "The trench is 7 ft 4 in deep in soil that was dug before," + " so it counts as Type C",
                        "Slope the bank 1.5 ft for each foot up, or shield it",
                        STEEP,
                        ""),
                new FindingNote(
                        "trench-egress",
                        "must",
                        "",
                        List.of(""),
                        "The trench is deeper than 4 ft",
                        "Keep a ladder" + " within 25 ft of everyone in it",
                        "29 CFR 1926.651(c)(2) (T-15)",
                        ""),
                new FindingNote(
                        "roots",
                        "advise",
                        "Maple by wall B",
                        List.of("Maple by wall B"),
                        "The trench reaches into the root zone of the maple",
                        "Let a tree specialist look before digging; cut roots clean",
                        "common practice, no source",
                        ""));
    }

    static ScopeSteps steps() {
        List<StepEvidence> seen = List.of(
                new StepEvidence("photo", "Photos of both", 1),
                new StepEvidence("initials", "Contractor", 1),
                new StepEvidence("initials", "Homeowner", 1));
        return new ScopeSteps(
                List.of(step(1, StepKind.LOCATE, "Check that every utility mark is on the ground.", List.of())),
                List.of(
                        new WallSteps(
                                "A",
                                List.of(
                                        step(
                                                2,
                                                StepKind.DIG,
                                                "Dig along the wall to the bottom of the footing.",
                                                List.of()),
                                        step(3, StepKind.HOLD_1, "Footing and bare wall seen.", seen),
                                        step(
                                                4,
                                                StepKind.FINISH,
                                                "Coat the wall in 2 coats.",
                                                List.of(new StepEvidence("figure", "Coat 1, wet mils", 5)))),
                                notes().subList(0, 1)),
                        new WallSteps(
                                "B",
                                List.of(step(5, StepKind.DIG, "Dig along this wall by hand.", List.of())),
                                List.of())),
                List.of(step(6, StepKind.HOLD_3, "Water test before anything is covered.", seen)));
    }

    private static ScopeStep step(int number, StepKind kind, String text, List<StepEvidence> evidence) {
        return new ScopeStep(number, kind, text, kind.rule(), evidence, List.of("ITEM-" + number));
    }

    static ScopeOfWork scope() {
        return new ScopeOfWork(
                head(false, Optional.empty()),
                scene(),
                steps(),
                List.of(wall("A", true), wall("B", false)),
                runs(),
                outlets(),
                new ScopeWater(true, false, List.of(), List.of()),
                List.of(
                        measured("haul", "Earth", "Surplus soil, loose", "38.4", "cy"),
                        measured("loads", "Earth", "Truck loads", "4", "loads"),
                        measured("fabric", "Drain", "Fabric over the stone", "430", "sf"),
                        measured("solid", "Main", "Solid pipe", "116", "ft"),
                        measured("topsoil", "Restore", "Topsoil", "9", "cy"),
                        measured("seed", "Restore", "Seed and straw", "1,480", "sf")),
                new ScopeSite(
                        "OH-2026-0413-118",
                        "Soil by hand test: silty clay. Water in the soil: seeps. Soil type for the trench: C.",
                        "Local code and the competent person govern; where they ask for more than this paper, do what"
                                + " they ask."),
                List.of("Mats on the lawn along the machine's way.", "A fence around the open trench every night."),
                notes(),
                AgreedParts.NONE);
    }

    static WarrantyCertificate certificate(boolean specimen) {
        return new WarrantyCertificate(
                head(false, Optional.empty()),
                specimen ? "" : "W-2026-014",
                scene(),
                promise(specimen),
                List.of(wall("A", true), wall("B", false)),
                runs(),
                "Ohio",
                List.of());
    }

    static CostSheet sheet() {
        return new CostSheet(
                head(false, Optional.empty()),
                new CostBook("Harrow Lane price book", "February 1, 2026"),
                List.of(
                        line("DIG-M", "Machine digging", "Dig", "61.1", "cy"),
                        line("DIG-H", "Hand digging", "Dig", "9.4", "cy"),
                        line("STRIP", "Strip flaking coating and scrape", "Clean and repair", "508", "sf"),
                        line("WASH", "Wash wall and footing", "Clean and repair", "508", "sf"),
                        line("COVE", "Cove at wall and footing", "Clean and repair", "74.5", "ft"),
                        line("CRACK", "Fill cracks", "Clean and repair", "14", "ft"),
                        line("COAT-R", "Liquid synthetic rubber, two coats", "Coat", "322", "sf"),
                        line("COAT-A", "Polymer-modified asphalt, one coat", "Coat", "186", "sf"),
                        line("PIPE-P", "Perforated pipe, 4 in rigid", "Drain", "78", "ft"),
                        line("STONE", "Washed stone No. 57", "Drain", "29", "tons"),
                        line("FABRIC", "Nonwoven fabric", "Drain", "430", "sf"),
                        line("MAIN", "Solid main, 4 in rigid", "Carry the water away", "52", "ft"),
                        line("ROOF", "Downspout line, solid", "Roof water", "64", "ft"),
                        line("FILL", "Backfill in lifts", "Backfill and grade", "52.7", "cy")),
                List.of(
                        section("Dig", "3105.44", "4860.00"),
                        section("Clean and repair", "1993.62", "3120.00"),
                        section("Coat", "3377.10", "5285.00")),
                new CostBuildUp(
                        Dollars.of("17173.20"),
                        List.of(
                                new PriceStep(
                                        "Direct cost",
                                        "sum of lines",
                                        "17,173.20",
                                        new BigDecimal("17173.20"),
                                        "$17,173.20"),
                                new PriceStep(
                                        "Contingency",
                                        "direct × 5%",
                                        "17,173.20 × 0.05",
                                        new BigDecimal("858.66"),
                                        "$858.66"),
                                new PriceStep(
                                        "Overhead",
                                        "(direct + contingency) × 20%",
                                        "18,031.86 × 0.20",
                                        new BigDecimal("3606.37"),
                                        "$3,606.37"),
                                new PriceStep(
                                        "Price",
                                        "cost ÷ (1 − 19.5%)",
                                        "21,638.23 ÷ 0.805",
                                        new BigDecimal("26879.79"),
                                        "$26,879.79")),
                        new BigDecimal("0.05"),
                        new BigDecimal("0.20"),
                        new BigDecimal("0.195"),
                        true,
                        new BigDecimal("1"),
                        Dollars.ZERO),
                new CostPrice(
                        Dollars.of("26875.00"), Dollars.ZERO, Dollars.of("26875.00"), Dollars.of("1474.42"), "19.5%"),
                List.of(
                        payment(1, "When you sign the contract", "10%", "0.1", false, "2687.50"),
                        payment(
                                2,
                                "When both walls are dug and you have seen the footing",
                                "90%",
                                "0.9",
                                true,
                                "24187.50")),
                new CostSupplies(
                        List.of(
                                new PurchaseRow(
                                        "COAT-R",
                                        "Liquid synthetic rubber",
                                        "33.9 gal",
                                        "25%",
                                        new BigDecimal("9"),
                                        "pail of 5 gal",
                                        "33.9 × 1.25 ÷ 5 = 8.475, rounded up to 9",
                                        Optional.empty()),
                                new PurchaseRow(
                                        "PIPE-P",
                                        "Perforated pipe",
                                        "78 ft",
                                        "5%",
                                        new BigDecimal("9"),
                                        "stick of 10 ft",
                                        "78 × 1.05 ÷ 10 = 8.19, rounded up to 9",
                                        Optional.empty())),
                        List.of(
                                new CrewRow(
                                        "Dig crew",
                                        "operator, labourer",
                                        new BigDecimal("31.5"),
                                        new BigDecimal("3.9")),
                                new CrewRow(
                                        "Wall crew", "two labourers", new BigDecimal("44"), new BigDecimal("5.5")))),
                List.of(
                        measured("dig-A", "Wall A", "Soil dug, as it lies", "61.1", "cy"),
                        measured("stone-A", "Wall A", "Washed stone", "14.5", "tons"),
                        measured("pipe-A", "Wall A", "Perforated pipe", "50", "ft")),
                new CostNotes(
                        List.of(),
                        notes(),
                        List.of(
                                "The gate is 8 ft wide; the small machine fits, the large one does not.",
                                "Ask for the key.")),
                Optional.empty(),
                Optional.empty());
    }

    private static PriceRow price(String name, String includes, String price) {
        return new PriceRow(name, includes, Dollars.of(price));
    }

    private static UnitPriceRow unit(String name, String explanation, String unit, String price) {
        return new UnitPriceRow(name, explanation, unit, Dollars.of(price));
    }

    private static PaymentRow payment(
            int number, String when, String share, String fraction, boolean last, String amount) {
        return new PaymentRow(number, when, share, new BigDecimal(fraction), last, Dollars.of(amount));
    }

    private static MeasuredRow measured(String id, String section, String what, String value, String unit) {
        return new MeasuredRow(
                id,
                section,
                what,
                new BigDecimal(value.replace(",", "")),
                unit,
                value + " " + unit,
                "V = L ÷ 6 × (A0 + 4 Am + A1) = 46.5 ÷ 6 × (33.1 + 4 × 35.4 + 37.9) = 1,649.9 cf = " + value + " "
                        + unit,
                "L 46.5 ft (job, wall A), A0 33.1 sf, Am 35.4 sf, A1 37.9 sf",
                "Simpson's rule, exact where the depth is linear");
    }

    private static CostSheetLine line(String code, String name, String section, String quantity, String unit) {
        return new CostSheetLine(
                code,
                name,
                section,
                new LineAmount(new BigDecimal(quantity), unit, quantity + " " + unit),
                "takeoff of walls A and B",
                new LineParts(
                        Dollars.of("412.80"),
                        Dollars.of("28.90"),
                        Dollars.of("655.12"),
                        Dollars.of("380.00"),
                        Dollars.ZERO,
                        Dollars.of("44.00"),
                        Dollars.of("1520.82")),
                "Dig crew",
                new BigDecimal("7.5"),
                Dollars.of("38.10"),
                Dollars.of("2327.91"));
    }

    private static CostSheetSection section(String name, String direct, String price) {
        return new CostSheetSection(name, Dollars.of(direct), Dollars.of(price), Dollars.ZERO, Dollars.of(price));
    }
}
