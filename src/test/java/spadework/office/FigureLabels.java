// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import spadework.job.Change;
import spadework.job.ChangeState;
import spadework.job.Closed;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.SolidRun;
import spadework.job.Wall;
import spadework.job.WarrantyPart;
import spadework.office.PaperLines.Line;

/**
 * The figures that papers tell with a label, and the words by which each paper tells them. The proposal tells the work
 * as offered, the contract with the options that were taken, the scope with changes as well, and the completion what
 * was built beside it.
 */
final class FigureLabels {
    private static final String FEET = "([0-9]+ ft(?: [0-9½]+ in)?|[0-9½]+ in)";
    private static final String DAY = "([A-Z][a-z]+ [0-9]{1,2}, [0-9]{4})";
    private static final String MONEY = "(−?\\$?[0-9][0-9,]*\\.[0-9]{2})";
    private static final Set<String> ANY = Set.of();

    private final Job job;
    private final List<Label> labels = new ArrayList<>();

    private FigureLabels(Job job) {
        this.job = job;
    }

    /**
     * A figure's label.
     *
     * @param papers where it is told in these words; empty for all
     * @param under the heading or sheet over the words; empty pattern for any
     */
    record Label(String name, Set<String> papers, Pattern under, Pattern words) {

        List<String> find(Line line) {
            List<String> values = new ArrayList<>();
            if ((papers.isEmpty() || papers.contains(line.paper()))
                    && under.matcher(line.under()).find()) {
                Matcher found = words.matcher(line.text());
                while (found.find()) {
                    values.add(found.group(1).replace("$", "").replace(",", ""));
                }
            }
            return values;
        }
    }

    static List<Label> of(Bid bid) {
        FigureLabels all = new FigureLabels(bid.dossier().job());
        all.dates();
        all.money();
        all.terms();
        allWalls(bid).forEach(all::wall);
        allPipes(bid).forEach(all::pipe);
        return List.copyOf(all.labels);
    }

    private static Stream<String> allWalls(Bid bid) {
        return Stream.of(
                        bid.proposed().job(),
                        bid.contracted().job(),
                        bid.dossier().job())
                .flatMap(job -> job.walls().stream())
                .map(Wall::label)
                .distinct();
    }

    private static Stream<String> allPipes(Bid bid) {
        return Stream.of(
                        bid.proposed().job(),
                        bid.contracted().job(),
                        bid.dossier().job())
                .flatMap(job -> Stream.of(
                                job.water().drains().stream().map(FootingDrain::label),
                                job.water().mains().stream().map(SolidRun::label),
                                job.water().roofLines().stream().map(SolidRun::label))
                        .flatMap(labels -> labels))
                .distinct();
    }

    private void add(String name, Set<String> papers, String words) {
        add(name, papers, "", words);
    }

    private void add(String name, Set<String> papers, String under, String words) {
        labels.add(new Label(name, papers, Pattern.compile(under), Pattern.compile(words)));
    }

    private void dates() {
        Set<String> offer = Set.of("proposal", "contract");
        add("start", offer, "start on or after " + DAY);
        add("start", offer, "starts on or about " + DAY);
        add("start", offer, "^(?:Approximate start|Start) \\| " + DAY);
        add("finish", offer, "finish by " + DAY);
        add("finish", offer, "substantially complete on or about " + DAY);
        add("finish", offer, "^(?:Approximate completion|Finish) \\| " + DAY);
        add("days", offer, "[:,] ([0-9]+) working days? at your house");
        add("days", offer, "We expect ([0-9]+) working days?");
        add("days", offer, "^Working days \\| ([0-9]+)");
        add("last day to cancel", Set.of("contract"), "(?i)last day to cancel(?: is)?(?: \\|)? " + DAY);
        add("last day to cancel", Set.of("contract"), "NOT LATER THAN MIDNIGHT OF " + DAY);
        add("work done", Set.of("completion"), "done on " + DAY);
        add("work done", Set.of("completion"), "^Work done \\| " + DAY);
    }

    private void money() {
        add("price, offered", Set.of("proposal"), "(?:this|offer this) work for " + MONEY);
        add("price, offered", Set.of("proposal"), "^Your price(?:, with sales tax)? \\| " + MONEY + "$");
        add("deposit, offered", Set.of("proposal"), "signed it, " + MONEY + " is due");
        add("deposit, offered", Set.of("proposal"), "^" + MONEY + " is then due");
        add("deposit, contracted", Set.of("contract"), "^Deposit \\| " + MONEY);
        add("deposit, contracted", Set.of("contract"), "the deposit is " + MONEY);
        add("deposit, contracted", Set.of("contract"), "Deposit \\(down payment\\)\\..*? \\| " + MONEY + "$");
        add("price after 0", Set.of("contract"), "^Contract price \\| " + MONEY + "$");
        add("price after 0", Set.of("completion"), "^Contract price(?:,| \\|).*? \\| " + MONEY + "$");
        int standing = 0;
        for (Change change : job.agreement().changes()) {
            Set<String> order = Set.of("change-order-" + change.number());
            add("price after " + standing, order, "^Contract price \\| (?:stays )?" + MONEY);
            add("price after " + standing, order, "the price stays " + MONEY);
            if (change.state() == ChangeState.ACCEPTED) {
                add("price after " + change.number(), order, "before this change, " + MONEY + " with it");
                add("change " + change.number(), order, "^This change(?: with sales tax)? \\| .*?" + MONEY + "$");
                add(
                        "change " + change.number(),
                        Set.of("completion"),
                        "^Change order " + change.number() + ",.*? \\| " + MONEY + "$");
                standing = change.number();
            }
        }
        add("price after " + standing, Set.of("completion"), "^Price \\| " + MONEY + "$");
        add("paid", Set.of("completion"), "^Paid \\| " + MONEY + "$");
        add("balance", Set.of("completion"), "^Still to pay \\| " + MONEY + "$");
        add("balance", Set.of("completion"), "You pay the balance of " + MONEY);
    }

    private void terms() {
        add("reply", ANY, "answer within ([0-9]+) working days?");
        add("transfer", ANY, "within ([0-9]+) days of the sale");
        for (WarrantyPart part : job.warranty().parts()) {
            String name = Pattern.quote(part.part());
            add("years of " + part.part(), ANY, "(?i)\\b" + name + " for ([0-9]+) years?");
            add("years of " + part.part(), ANY, "^" + name + " \\| (?:[^|0-9]* \\| )?([0-9]+) \\|");
        }
    }

    private void wall(String label) {
        String wall = "^Wall " + Pattern.quote(label) + "\\b";
        length(label, "offered", Set.of("proposal"), wall + "[^:;|]*?, " + FEET + "(?=[:;]|$)");
        length(label, "contracted", Set.of("contract"), wall + "[^|]* \\| (?:[^|]* \\| )??" + FEET + " \\|");
        length(
                label,
                "contracted",
                Set.of("contract"),
                "\\bWall " + Pattern.quote(label) + ", [^;|]*?, " + FEET + "(?=;|$)");
        length(
                label,
                "agreed",
                Set.of("scope-of-work"),
                "(?:^|; )" + Pattern.quote(label) + ", [^;]*?, " + FEET + ", trench");
        length(label, "agreed", Set.of("scope-of-work"), wall + " \\| [^|]*, " + FEET + " \\|");
        length(label, "agreed", Set.of("completion"), wall + " \\| Length \\| " + FEET);
        length(label, "built", Set.of("completion"), wall + " \\| Length \\| [^|]* \\| " + FEET);
        length(label, certified(), Set.of("warranty"), wall + " \\| [^|]* \\| (?:[^|]* \\| )?" + FEET + "(?: \\||$)");
        // What an option would put on stands under that heading.
        add("film of " + label + ", contracted", Set.of("contract"), "^(?!Options)", wall + ".*?([0-9]+ mil)\\b");
        film(label, "agreed", Set.of("scope-of-work"), wall + ".*?([0-9]+ mil)\\b");
        film(label, "agreed", Set.of("completion"), "([0-9]+ mil) on wall " + Pattern.quote(label) + "\\b");
        film(label, "agreed", Set.of("warranty"), wall + ".*?([0-9]+ mil)\\b");
        add("gallons on " + label + ", agreed", Set.of("scope-of-work"), wall, "planned: ([0-9.]+ gal)");
        add(
                "gallons on " + label + ", agreed",
                Set.of("completion"),
                wall + " \\| Coating on the wall \\| ([0-9.]+ gal)");
        add(
                "gallons on " + label + ", built",
                Set.of("completion"),
                wall + " \\| Coating on the wall \\| [^|]* \\| ([0-9.]+ gal)");
        add(
                "gallons on " + label + ", built",
                Set.of("completion"),
                "\\bWall " + Pattern.quote(label) + ": [^.;]*?([0-9]+(?:\\.[0-9]+)? gal) on");
        add(
                "trench of " + label,
                Set.of("scope-of-work"),
                "(?:^|; )" + Pattern.quote(label) + ", [^;]*?, trench " + FEET + " deep");
        add("trench of " + label, Set.of("scope-of-work"), wall, "; trench " + FEET + " deep");
    }

    /** What a certificate covers: what was built once it is issued; its specimen what was agreed. */
    private String certified() {
        return job.closed().flatMap(Closed::certificate).isPresent() ? "built" : "agreed";
    }

    private void length(String label, String stage, Set<String> papers, String words) {
        add("length of " + label + ", " + stage, papers, words);
    }

    private void film(String label, String stage, Set<String> papers, String words) {
        add("film of " + label + ", " + stage, papers, words);
    }

    private void pipe(String label) {
        String name = Pattern.quote(label);
        String row = "^" + name + "\\b[^|]* \\|(?:[^|]* \\|)*? ?" + FEET + "(?: \\||$)";
        String kind = "^(?:Footing drain|Solid main|Roof line) " + name;
        length(label, "offered", Set.of("proposal"), "\\b" + name + ", " + FEET);
        length(label, "contracted", Set.of("contract"), row);
        length(label, "contracted", Set.of("contract"), "(?:footing drain|solid main|roof line) " + name + ", " + FEET);
        length(label, "agreed", Set.of("scope-of-work"), row);
        length(label, "agreed", Set.of("completion"), kind + " \\| Length \\| " + FEET);
        length(label, "built", Set.of("completion"), kind + " \\| Length \\| [^|]* \\| " + FEET);
        length(label, certified(), Set.of("warranty"), "(?:footing drain|solid main|roof line) " + name + ", " + FEET);
        length(label, certified(), Set.of("warranty"), row);
    }
}
