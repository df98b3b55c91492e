// SPDX-License-Identifier: Apache-2.0
package spadework.listing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import spadework.contract.Contract;
import spadework.contract.PricedChange;
import spadework.contract.PricedOption;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.job.Job;
import spadework.money.Dollars;
import spadework.pricing.OfferedPrice;
import spadework.pricing.PricedLine;
import spadework.pricing.PricedSection;
import spadework.pricing.Quote;
import spadework.takeoff.Quantity;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;
import spadework.working.Worked;

/**
 * A job for other programs to read, as JSON. Money is decimal text; what makes lines and total differ is a line too.
 */
public final class Listing {
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private Listing() {}

    /** Names of the amounts that are no section of the takeoff. */
    public record Names(
            String minimum,
            String salesTax,
            Function<PricedOption, String> option,
            Function<PricedChange, String> change) {}

    /** What was agreed: its quantities and lines, and the contract that made it of what was proposed. */
    public record AgreedWork(Takeoff takeoff, Quote quote, Contract contract) {}

    /**
     * Price, quantities with their workings, lines and findings. Sections add up to the total as it stands, options
     * taken and accepted changes with them; quantities and lines are those of the agreed work.
     */
    public static String price(Job job, AgreedWork work, List<Finding> findings, Phrases phrases, Names names) {
        Contract contract = work.contract();
        OfferedPrice offered = contract.proposed();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("job", job.number());
        root.put("total", contract.total().plain());
        ArrayNode sections = root.putArray("sections");
        offered.sections()
                .forEach(section -> section(sections, section.section().name(), section.price()));
        if (!offered.minimumTopUp().isZero()) {
            section(sections, names.minimum(), offered.minimumTopUp());
        }
        if (!offered.tax().isZero()) {
            section(sections, names.salesTax(), offered.tax());
        }
        contract.taken()
                .forEach(taken -> section(
                        sections, names.option().apply(taken), taken.sum().total()));
        contract.accepted()
                .forEach(change -> section(
                        sections, names.change().apply(change), change.agreed().total()));
        ArrayNode quantities = root.putArray("quantities");
        work.takeoff().quantities().forEach(quantity -> quantity(quantities.addObject(), quantity));
        List<TakeoffLine> assembled = work.takeoff().lines().stream()
                .filter(line -> line.working().isPresent())
                .toList();
        if (!assembled.isEmpty()) {
            ArrayNode workings = root.putArray("assembled");
            assembled.forEach(line -> workings.addObject()
                    .put("code", line.code())
                    .put("section", line.section().label())
                    .put("quantity", line.quantity().toPlainString())
                    .put("unit", line.unit().symbol())
                    .put("working", line.working().get().line()));
        }
        lines(root.putArray("lines"), work.quote());
        root.set("findings", findings(findings, phrases));
        root.put("deference", phrases.deference());
        return text(root);
    }

    /**
     * A way to dig beside the others.
     *
     * @param offered whether nothing that the job states stands against it
     * @param verdict in words: what is against it, or how it compares
     * @param figures what it comes to, as printed, by name; none where it is not offered
     */
    public record DigWay(String way, boolean offered, String verdict, Map<String, String> figures) {}

    /** Findings, and the ways to dig side by side. */
    public static String check(Job job, List<Finding> findings, List<DigWay> ways, Phrases phrases) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("job", job.number());
        ArrayNode choices = root.putArray("choices");
        for (DigWay way : ways) {
            ObjectNode choice = choices.addObject();
            choice.put("way", way.way()).put("offered", way.offered()).put("verdict", way.verdict());
            way.figures().forEach(choice::put);
        }
        root.set("findings", findings(findings, phrases));
        root.put("deference", phrases.deference());
        return text(root);
    }

    /** What kept a job from being read. */
    public static String faults(List<Fault> faults) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ArrayNode array = root.putArray("faults");
        for (Fault fault : faults) {
            ObjectNode node = array.addObject();
            node.put("file", fault.place().file());
            node.put("line", fault.place().line());
            node.put("column", fault.place().column());
            node.put("pointer", fault.place().pointer());
            node.put("found", fault.found());
            node.put("allowed", fault.allowed());
            node.put("fix", fault.fix());
        }
        return text(root);
    }

    private static void section(ArrayNode sections, String name, Dollars price) {
        sections.addObject().put("name", name).put("price", price.plain());
    }

    private static void quantity(ObjectNode node, Quantity quantity) {
        node.put("id", quantity.id());
        node.put("description", quantity.description());
        node.put("value", quantity.value());
        node.put("unit", quantity.unit().symbol());
        node.put(
                "working",
                quantity.working() instanceof Worked worked
                        ? worked.line()
                        : quantity.working().valueText());
    }

    private static void lines(ArrayNode array, Quote quote) {
        for (PricedLine line : quote.lines()) {
            line(
                    array,
                    line.code(),
                    line.quantity().toPlainString(),
                    line.unit().symbol(),
                    line.unitPrice(),
                    line.price());
        }
        for (PricedSection section : quote.sections()) {
            if (!section.rounding().isZero()) {
                line(array, "ROUNDING", "1", "job", section.rounding(), section.rounding());
            }
        }
        if (!quote.minimumTopUp().isZero()) {
            line(array, "MINIMUM", "1", "job", quote.minimumTopUp(), quote.minimumTopUp());
        }
        if (!quote.tax().isZero()) {
            line(array, "SALES-TAX", "1", "job", quote.tax(), quote.tax());
        }
    }

    private static void line(
            ArrayNode array, String code, String quantity, String unit, Dollars unitPrice, Dollars price) {
        array.addObject()
                .put("code", code)
                .put("quantity", quantity)
                .put("unit", unit)
                .put("unitPrice", unitPrice.plain())
                .put("price", price.plain());
    }

    private static ArrayNode findings(List<Finding> findings, Phrases phrases) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        for (Finding finding : findings) {
            array.addObject()
                    .put("id", finding.id())
                    .put("severity", finding.severity().name().toLowerCase(Locale.ROOT))
                    .put("about", finding.about())
                    .put("what", phrases.what(finding))
                    .put("action", phrases.action(finding))
                    .put("citation", finding.citation());
        }
        return array;
    }

    private static String text(ObjectNode root) {
        try {
            return JSON.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
