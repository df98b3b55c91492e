// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.contract.Contract;
import spadework.contract.PricedChange;
import spadework.contract.PricedOption;
import spadework.drawing.plan.HouseGround;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Scene;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.listing.Listing;
import spadework.money.Dollars;
import spadework.office.records.AgreedRecord;
import spadework.paperwork.Dossier;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.pricing.ItemPrice;
import spadework.pricing.Margin;
import spadework.pricing.OfferedPrice;
import spadework.pricing.Quote;
import spadework.safety.Checks;
import spadework.safety.Facts;
import spadework.takeoff.Takeoff;
import spadework.whatif.Case;
import spadework.whatif.WallFootBand;

/**
 * A job that was read, measured, checked and priced.
 *
 * @param proposed the job as proposed, without its options
 * @param contracted the work as contracted: with the options taken, before any change; before acceptance as proposed
 * @param dossier the agreed work: with the options taken and the accepted changes; before acceptance the same
 * @param proposedQuote price and cost of the job as proposed
 * @param quote price and cost of the agreed work
 */
public record Bid(Dossier proposed, Dossier contracted, Dossier dossier, Quote proposedQuote, Quote quote)
        implements BidResult {

    /** The stops that nobody has accepted in the job: they keep the papers from being issued. */
    public List<Finding> openStops() {
        return findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP && !isAnsweredFor(finding))
                .toList();
    }

    /** All findings, gravest first. */
    public List<Finding> findings() {
        return Stream.concat(dossier.findings().contract().stream(), dossier.findings().site().stream())
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** What was measured. */
    public Takeoff takeoff() {
        return dossier.takeoff();
    }

    /** The price book as this job uses it. */
    public PriceBook book() {
        return dossier.book();
    }

    /** Whether a finding is about the work on site, and so stands on the crew's paper. */
    public boolean isForCrew(Finding finding) {
        return dossier.findings().site().contains(finding);
    }

    /** What is left of the price after cost, contingency, and overhead, in percent of it; none for no price. */
    public Optional<BigDecimal> margin() {
        return Margin.of(
                dossier.company().priceRules(), dossier.contract().now().price(), quote.lines());
    }

    /** What the homeowner pays for a foot of the walls that are dug along, to a cent; none without walls. */
    public Optional<BigDecimal> perFoot() {
        return WallFootBand.perFoot(dossier.job(), total());
    }

    /** The working days that the job names. */
    public int workingDays() {
        return dossier.job().schedule().workingDays();
    }

    /** What one unit of an item is sold for by itself. */
    public Dollars sellingPrice(LineItem item) {
        return ItemPrice.of(item, BigDecimal.ONE, dossier.company(), dossier.book());
    }

    /** Stops on site, in words, that the work done otherwise would have and has not as it is. */
    public List<String> addedStops(Case otherwise) {
        Set<String> now = stops(dossier.findings().site());
        return stops(Checks.of(new Facts(otherwise.job(), otherwise.book()))).stream()
                .filter(stop -> !now.contains(stop))
                .toList();
    }

    private Set<String> stops(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .map(finding -> Severity.STOP + " " + dossier.phrases().described(finding))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The plan of the house. */
    public Scene plan() {
        return PlanSketch.of(dossier.job());
    }

    /** The ground that is dug and the way of the water, laid round a house that is drawn elsewhere. */
    public HouseGround ground(Rect house, Rect sheet) {
        return HouseGround.of(dossier.job(), house, sheet);
    }

    /** What the homeowner pays: the contract as it stands. */
    public Dollars total() {
        return dossier.contract().total();
    }

    /** Those of the papers that the job is ready for: a contract has to know how it is signed. */
    public Set<PaperKind> prepared(Set<PaperKind> papers) {
        boolean signing = contracted.job().agreement().signing().isPresent();
        return papers.stream()
                .filter(paper -> paper != PaperKind.CONTRACT || signing)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(PaperKind.class)));
    }

    /** Sections, options taken, accepted changes and total as lines of text. */
    public List<String> priceTable() {
        Contract contract = dossier.contract();
        OfferedPrice offered = contract.proposed();
        List<String> rows = new ArrayList<>();
        offered.sections().forEach(section -> rows.add(row(section.section().name(), section.price())));
        if (!offered.minimumTopUp().isZero()) {
            rows.add(row(minimumName(), offered.minimumTopUp()));
        }
        if (!offered.tax().isZero()) {
            rows.add(row(salesTaxName(), offered.tax()));
        }
        contract.taken()
                .forEach(option -> rows.add(row(optionName(option), option.sum().total())));
        contract.accepted()
                .forEach(change ->
                        rows.add(row(changeName(change), change.agreed().total())));
        rows.add(row(dossier.terms().get("total.name"), contract.total()));
        return rows;
    }

    private static String row(String name, Dollars price) {
        return String.format(Locale.ROOT, "%-60s %14s", name, price.text());
    }

    /** Ways to dig the trenches side by side, as lines of text; none where no wall is dug. */
    public List<String> choices() {
        return DigChoices.lines(dossier);
    }

    /** Whether the job records who answers for a finding; nobody answers for what the register has otherwise. */
    public boolean isAnsweredFor(Finding finding) {
        return !AgreedRecord.isOfTheRegister(finding)
                && dossier.job().acceptedStops().stream()
                        .anyMatch(stop -> stop.finding().equals(finding.id())
                                && stop.about().equals(finding.about()));
    }

    /** The bid for other programs, as JSON. */
    public String priceListing() {
        return Listing.price(
                dossier.job(),
                new Listing.AgreedWork(dossier.takeoff(), quote, dossier.contract()),
                findings(),
                dossier.phrases(),
                new Listing.Names(minimumName(), salesTaxName(), Bid::optionName, this::changeName));
    }

    private static String optionName(PricedOption option) {
        return option.option().label() + ", " + option.option().title();
    }

    private String changeName(PricedChange change) {
        return dossier.terms()
                .get(
                        "change.name",
                        "number",
                        Integer.toString(change.change().number()),
                        "title",
                        change.change().title());
    }

    private String minimumName() {
        return dossier.terms().get("minimum.name");
    }

    private String salesTaxName() {
        return dossier.terms().get("tax.name");
    }

    /** The findings for other programs, as JSON. */
    public String checkListing() {
        return Listing.check(dossier.job(), findings(), DigChoices.listed(dossier), dossier.phrases());
    }
}
