// SPDX-License-Identifier: Apache-2.0
package spadework.listing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import spadework.warranty.Card;
import spadework.warranty.CardRow;
import spadework.warranty.Claim;
import spadework.warranty.CoveredPart;
import spadework.warranty.CoveredRun;
import spadework.warranty.Warranty;

/** Warranties for other programs to read, as JSON: dates as ISO text, money as decimal text. */
public final class WarrantyListing {
    private WarrantyListing() {}

    /** Parts in force on a day, by folder and certificate. */
    public static String inForce(LocalDate on, List<InForce> rows) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("on", on.toString());
        ArrayNode parts = root.putArray("inForce");
        for (InForce row : rows) {
            ObjectNode part = parts.addObject();
            part.put("folder", row.folder()).put("number", row.warranty().number());
            texts(part.putArray("owners"), row.warranty().parties().owners());
            part.put("address", row.warranty().parties().address());
            part(part, row.part());
        }
        return RegisterListing.text(root);
    }

    /** A part that is in force. */
    public record InForce(String folder, Warranty warranty, CoveredPart part) {}

    /** Warranties as they stand on a day, with their claims. */
    public static String standing(LocalDate on, Map<Warranty, List<Claim>> warranties) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("on", on.toString());
        ArrayNode all = root.putArray("warranties");
        warranties.forEach((warranty, claims) -> {
            ObjectNode node = warranty(warranty);
            texts(
                    node.putArray("inForce"),
                    warranty.inForce(on).stream().map(CoveredPart::part).toList());
            ArrayNode list = node.putArray("claims");
            claims.forEach(claim -> claim(list.addObject(), claim));
            all.add(node);
        });
        return RegisterListing.text(root);
    }

    /** Maintenance cards. */
    public static String cards(List<Card> cards) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ArrayNode all = root.putArray("cards");
        cards.forEach(card -> card(all.addObject(), card));
        return RegisterListing.text(root);
    }

    private static void card(ObjectNode root, Card card) {
        root.put("number", card.warranty().number());
        ArrayNode rows = root.putArray("seasons");
        for (CardRow row : card.rows()) {
            ObjectNode node = rows.addObject();
            node.put("season", row.season().words()).put("year", row.year());
            node.put("from", row.from().toString()).put("until", row.until().toString());
            texts(node.putArray("duties"), row.duties());
            ArrayNode ending = node.putArray("ending");
            row.ending().forEach(part -> part(ending.addObject(), part));
        }
    }

    static ObjectNode warranty(Warranty warranty) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("number", warranty.number());
        warranty.reissueOf().ifPresent(first -> node.put("reissueOf", first));
        node.put("job", warranty.job());
        texts(node.putArray("owners"), warranty.parties().owners());
        node.put("address", warranty.parties().address());
        covered(node.putArray("walls"), warranty.coverage().walls());
        covered(node.putArray("runs"), warranty.coverage().runs());
        ArrayNode parts = node.putArray("parts");
        warranty.coverage().parts().forEach(part -> part(parts.addObject(), part));
        node.put("replyDays", warranty.terms().replyDays());
        node.put("visitDays", warranty.terms().visitDays());
        node.put("findingDays", warranty.terms().findingDays());
        node.put("beginDays", warranty.terms().beginDays());
        node.put("transfers", warranty.terms().transfers());
        node.put("transferNoticeDays", warranty.terms().transferNoticeDays());
        texts(node.putArray("notCovered"), warranty.coverage().notCovered());
        texts(node.putArray("duties"), warranty.terms().duties());
        node.putObject("contractor")
                .put("name", warranty.parties().contractor().name())
                .put("address", warranty.parties().contractor().address())
                .put("phone", warranty.parties().contractor().phone())
                .put("email", warranty.parties().contractor().email())
                .put("license", warranty.parties().contractor().license());
        return node;
    }

    private static void claim(ObjectNode node, Claim claim) {
        node.put("number", claim.number()).put("state", claim.state().words());
        ArrayNode steps = node.putArray("steps");
        claim.steps().forEach(step -> {
            ObjectNode line = steps.addObject().put("on", step.on().toString());
            step.facts().forEach(line::put);
        });
    }

    private static void part(ObjectNode node, CoveredPart part) {
        node.put("part", part.part()).put("promise", part.promise()).put("years", part.years());
        node.put("firstDay", part.firstDay().toString())
                .put("lastDay", part.lastDay().toString());
    }

    private static void covered(ArrayNode list, List<CoveredRun> all) {
        all.forEach(each -> list.addObject()
                .put("label", each.label())
                .put("what", each.what())
                .put("length", each.length()));
    }

    private static void texts(ArrayNode list, List<String> texts) {
        texts.forEach(list::add);
    }
}
