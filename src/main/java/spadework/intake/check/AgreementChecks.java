// SPDX-License-Identifier: Apache-2.0
package spadework.intake.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.intake.source.Excerpt;
import spadework.intake.source.SourceFile;
import spadework.intake.value.DateOrder;
import spadework.intake.value.Names;
import spadework.job.Accepted;
import spadework.job.Agreed;
import spadework.job.Agreement;
import spadework.job.AsBuilt;
import spadework.job.Change;
import spadework.job.Closed;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Option;
import spadework.job.Sale;
import spadework.job.Signing;
import spadework.job.SolidRun;
import spadework.job.Wall;

/** Options, acceptance, change orders and the as-built record fit each other and the job. */
public final class AgreementChecks {
    private final Agreement agreement;
    private final SourceFile sheet;

    private AgreementChecks(Agreement agreement, SourceFile sheet) {
        this.agreement = agreement;
        this.sheet = sheet;
    }

    static void check(Job job, SourceFile sheet) {
        AgreementChecks checks = new AgreementChecks(job.agreement(), sheet);
        checks.labels();
        job.agreement().signing().ifPresent(signing -> checks.signing(job, signing));
        job.agreement().accepted().ifPresent(yes -> checks.accepted(job, yes));
        checks.changes();
        if (sheet.faults().isEmpty()) {
            job.agreement().asBuilt().ifPresent(built -> checks.built(job, built));
        }
    }

    private void labels() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < agreement.options().size(); i++) {
            String pointer = "/options/" + i + "/label";
            String label = agreement.options().get(i).label();
            if (sheet.isSound(pointer) && !seen.add(label)) {
                sheet.fault(
                        pointer,
                        "the label " + Excerpt.quoted(label) + " a second time",
                        "each option's label once",
                        "choose another label");
            }
        }
    }

    private void accepted(Job job, Accepted yes) {
        List<String> known = agreement.options().stream().map(Option::label).toList();
        Names names = new Names("the label of an option", new HashSet<>(known), sheet.isSound("/options"));
        Set<String> decided = new HashSet<>();
        decide("/accepted/options", yes.options(), names, decided);
        decide("/accepted/declined", yes.declined(), names, decided);
        List<String> open =
                known.stream().filter(label -> !decided.contains(label)).toList();
        if (sheet.isSound("/accepted") && sheet.isSound("/options") && !open.isEmpty()) {
            sheet.fault(
                    "/accepted",
                    "no word on option " + String.join(", ", open),
                    "every option in \"options\" or in \"declined\"",
                    "write which it was");
        }
        if (sheet.isSound("/accepted") && sheet.isSound("/options")) {
            together(yes);
        }
        order("/issued", job.issued(), "/accepted/on", yes.on());
        Optional<LocalDate> dated =
                agreement.signing().flatMap(signing -> signing.sale().on());
        if (sheet.isSound("/accepted/on")
                && sheet.isSound("/signing/on")
                && dated.filter(day -> !day.equals(yes.on())).isPresent()) {
            sheet.fault(
                    "/signing/on",
                    dated.get().toString(),
                    "the day of \"accepted\", " + yes.on(),
                    "one day stands on the contract and in the register: write the day on which it was really signed");
        }
    }

    /** The day of signing and who signs for whom. */
    private void signing(Job job, Signing signing) {
        Sale sale = signing.sale();
        sale.on().ifPresent(day -> order("/issued", job.issued(), "/signing/on", day));
        if (sale.on().isPresent() && sale.received().isPresent()) {
            order(
                    "/signing/on",
                    sale.on().get(),
                    "/signing/received",
                    sale.received().get());
        }
        Names owners =
                new Names("a name of the customer", new HashSet<>(job.customer().names()), true);
        for (int i = 0; i < signing.signers().size(); i++) {
            String pointer = "/signing/signers/" + i + "/owner";
            if (sheet.isSound(pointer) && sheet.isSound("/customer/names")) {
                String owner = signing.signers().get(i).owner();
                owners.check(sheet, pointer, owner, Excerpt.quoted(owner));
            }
        }
    }

    private void decide(String list, List<String> labels, Names names, Set<String> decided) {
        for (int i = 0; i < labels.size(); i++) {
            String pointer = list + "/" + i;
            if (sheet.isSound(pointer)) {
                names.check(sheet, pointer, labels.get(i), Excerpt.quoted(labels.get(i)));
                if (!decided.add(labels.get(i))) {
                    sheet.fault(
                            pointer,
                            Excerpt.quoted(labels.get(i)) + " a second time",
                            "each option once, taken or declined",
                            "keep one of the two");
                }
            }
        }
    }

    /** Two options that change the same thing cannot both be taken: each was priced alone. */
    private void together(Accepted yes) {
        Map<String, String> touched = new HashMap<>();
        for (int i = 0; i < yes.options().size(); i++) {
            String label = yes.options().get(i);
            for (String thing : AlterationChecks.touched(agreement.option(label).alteration())) {
                String other = touched.putIfAbsent(thing, label);
                if (other != null && sheet.isSound("/accepted/options/" + i)) {
                    sheet.fault(
                            "/accepted/options/" + i,
                            "options " + other + " and " + label + ", which both change " + thing,
                            "one of the two",
                            "take one of the two out");
                }
            }
        }
    }

    private void changes() {
        if (agreement.accepted().isEmpty() && !agreement.changes().isEmpty()) {
            sheet.fault(
                    "/changes",
                    "change orders to a job that nobody accepted",
                    "\"accepted\" first",
                    "change the job itself, or record its acceptance with the command \"accept\"");
        }
        for (int i = 0; i < agreement.changes().size(); i++) {
            Change change = agreement.changes().get(i);
            String pointer = "/changes/" + i;
            int last = i == 0 ? 0 : agreement.changes().get(i - 1).number();
            if (sheet.isSound(pointer + "/number") && change.number() <= last) {
                sheet.fault(
                        pointer + "/number",
                        Integer.toString(change.number()),
                        "a number above " + last,
                        "number change orders upward in the order in which they stand");
            }
            agreement
                    .accepted()
                    .ifPresent(yes -> order("/accepted/on", yes.on(), pointer + "/issued", change.issued()));
            change.decision()
                    .ifPresent(decision ->
                            order(pointer + "/issued", change.issued(), pointer + "/decision/on", decision.on()));
        }
    }

    private void built(Job job, AsBuilt built) {
        Job agreed = Agreed.of(job);
        List<String> walls = agreed.walls().stream().map(Wall::label).toList();
        List<String> pipes = new ArrayList<>(
                agreed.water().drains().stream().map(FootingDrain::label).toList());
        pipes.addAll(agreed.water().mains().stream().map(SolidRun::label).toList());
        pipes.addAll(agreed.water().roofLines().stream().map(SolidRun::label).toList());
        labels(
                "/asBuilt/walls",
                built.walls().stream().map(wall -> wall.label()).toList(),
                walls,
                "a wall");
        labels(
                "/asBuilt/pipes",
                built.pipes().stream().map(pipe -> pipe.label()).toList(),
                pipes,
                "a pipe");
        Names lines = new Names("the label of a pipe that was agreed", new HashSet<>(pipes), true);
        for (int i = 0; i < built.flowTests().size(); i++) {
            String pointer = "/asBuilt/flowTests/" + i + "/line";
            built.flowTests()
                    .get(i)
                    .line()
                    .ifPresent(label -> lines.check(sheet, pointer, label, Excerpt.quoted(label)));
        }
        built.finished().ifPresent(last -> order("/asBuilt/started", built.started(), "/asBuilt/finished", last));
        for (int i = 0; i < built.inspections().size(); i++) {
            order(
                    "/asBuilt/started",
                    built.started(),
                    "/asBuilt/inspections/" + i + "/on",
                    built.inspections().get(i).on());
        }
        agreement.accepted().ifPresent(yes -> order("/accepted/on", yes.on(), "/asBuilt/started", built.started()));
        for (int i = 0; i < built.walls().size(); i++) {
            for (int j = 0; j < built.walls().get(i).holdPoints().size(); j++) {
                order(
                        "/asBuilt/started",
                        built.started(),
                        "/asBuilt/walls/" + i + "/holdPoints/" + j + "/on",
                        built.walls().get(i).holdPoints().get(j).on());
            }
        }
        for (int i = 0; i < built.flowTests().size(); i++) {
            order(
                    "/asBuilt/started",
                    built.started(),
                    "/asBuilt/flowTests/" + i + "/on",
                    built.flowTests().get(i).on());
        }
        agreement.closed().ifPresent(closed -> closed(built, closed));
    }

    private void closed(AsBuilt built, Closed closed) {
        if (built.finished().isPresent()) {
            order("/asBuilt/finished", built.finished().get(), "/closed/completed", closed.completed());
        } else {
            sheet.fault(
                    "/closed/completed",
                    Excerpt.quoted(closed.completed().toString()) + " for work without a last day",
                    "a job whose record of what was built says when it was finished",
                    "add \"finished\" to \"asBuilt\"");
        }
    }

    private void labels(String list, List<String> labels, List<String> known, String what) {
        Names names = new Names("the label of " + what + " that was agreed", new HashSet<>(known), true);
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < labels.size(); i++) {
            String pointer = list + "/" + i + "/label";
            names.check(sheet, pointer, labels.get(i), Excerpt.quoted(labels.get(i)));
            if (!seen.add(labels.get(i))) {
                sheet.fault(
                        pointer, Excerpt.quoted(labels.get(i)) + " a second time", "each once", "keep one of the two");
            }
        }
    }

    private void order(String first, LocalDate earlier, String second, LocalDate later) {
        DateOrder.inOrder(sheet, first, earlier, second, later);
    }
}
