// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.ground.BodyKind;
import spadework.ground.DigBody;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.measure.Digits;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.trench.Benching;
import spadework.trench.SlopeTable;
import spadework.trench.TrenchLimits;

/**
 * What ground that is dug so deep asks for: 29 CFR 1926.651 and .652 (T-13 to T-26). It never says that a trench is
 * safe. What is said of several bodies in the same words is found once for all of them; a stop stays by itself.
 */
public final class TrenchDuties {
    private static final Length AIR_TEST_OVER = Length.ofFeet(4);
    private static final String PROTECTION = "29 CFR 1926.652(a)(1)";

    private TrenchDuties() {}

    /** People in what a job digs. The gap between wall and bank is a trench (T-22). */
    static List<Finding> check(Facts facts) {
        List<DigBody> bodies = facts.bodies();
        Seepage seepage = facts.job().site().soil().seepage();
        List<Finding> found = new ArrayList<>(of(bodies, seepage == Seepage.FREE));
        if (bodies.stream().anyMatch(DigBody::entered)) {
            found.addAll(everywhere(facts.job().site().address().state()));
        }
        if (seepage != Seepage.NONE) {
            found.add(must("water-in-trench", "", "29 CFR 1926.651(h) (from memory)"));
        }
        return found;
    }

    /** A place where people go in: what it is called, how deep it is, and the bank as it is to be dug. */
    private record Place(BodyNames name, Length depth, Bank bank, boolean laidBack, boolean seeping) {}

    /** One duty at one place; {@code figures} are all but the depth. */
    private record Duty(String id, Severity severity, String citation, List<String> figures, Place place) {}

    /**
     * Protection, ladder and air of one trench that is figured by itself.
     *
     * @param about what it is called
     * @param depth grade to the trench's bottom at the deepest place
     * @param bank the outer bank as it is to be dug
     */
    public static List<Finding> at(String about, Length depth, Bank bank) {
        boolean laidBack = bank.slope().number() > 0;
        return grouped(List.of(new Place(BodyNames.alone(about), depth, bank, laidBack, false)));
    }

    /**
     * The same of all that is dug and entered.
     *
     * @param seeping whether water seeps freely from the soil
     */
    static List<Finding> of(List<DigBody> bodies, boolean seeping) {
        return grouped(bodies.stream()
                .filter(DigBody::entered)
                .map(body -> new Place(
                        BodyNames.of(body),
                        body.deepest(),
                        body.bank(),
                        body.slopeAt(body.deepest().feet()) > 0 || body.kind() == BodyKind.WALL,
                        seeping))
                .toList());
    }

    /**
     * What every trench asks for.
     *
     * @param state where it is dug, as the finding names it
     */
    public static List<Finding> everywhere(String state) {
        return List.of(
                must("spoil-back", "", "29 CFR 1926.651(j)(2)"),
                must("daily-inspection", "", "29 CFR 1926.651(k)(1)"),
                must("not-below-footing", "", "29 CFR 1926.651(i) (from memory); IBC 1804.1"),
                advise("state-plan", state, "29 CFR 1952 (from memory)"));
    }

    private static List<Finding> grouped(List<Place> places) {
        List<Duty> duties =
                new ArrayList<>(places.stream().map(TrenchDuties::protection).toList());
        for (Place place : places) {
            if (LadderRule.asks(place.depth())) {
                duties.add(new Duty("ladder", Severity.MUST, LadderRule.CITATION, LadderRule.figures(), place));
            }
        }
        for (Place place : places) {
            if (place.depth().feet() > AIR_TEST_OVER.feet() + Bank.HAIR) {
                duties.add(new Duty("air-test", Severity.ADVISE, "29 CFR 1926.651(g)(1)", List.of(), place));
            }
        }
        Map<String, List<Duty>> groups = new LinkedHashMap<>();
        for (Duty duty : duties) {
            String alone =
                    duty.severity() == Severity.STOP ? duty.place().name().label() : "";
            groups.computeIfAbsent(duty.id() + duty.severity() + duty.figures() + alone, key -> new ArrayList<>())
                    .add(duty);
        }
        return groups.values().stream().map(TrenchDuties::finding).toList();
    }

    private static Finding finding(List<Duty> same) {
        Duty first = same.get(0);
        List<Length> depths = same.stream().map(duty -> duty.place().depth()).toList();
        Map<String, String> values = new LinkedHashMap<>();
        List<BodyNames> names = same.stream().map(duty -> duty.place().name()).toList();
        values.put("at", BodyNames.joined(names));
        values.put("depth", BodyNames.range(depths));
        for (int i = 0; i < first.figures().size(); i += 2) {
            values.put(first.figures().get(i), first.figures().get(i + 1));
        }
        if (first.id().equals("slope-back") || first.id().equals("bench-back")) {
            values.put(
                    "out",
                    BodyNames.range(same.stream().map(duty -> out(duty.place())).toList()));
        }
        return new Finding(
                first.id(),
                first.severity(),
                BodyNames.labels(names),
                values,
                first.citation(),
                BodyNames.bodies(names));
    }

    /** How far the bank's edge lies behind its toe. */
    private static Length out(Place place) {
        return Length.ofFeet(place.bank().line(place.depth()).out(place.depth().feet()));
    }

    private static Duty protection(Place place) {
        Length depth = place.depth();
        Bank bank = place.bank();
        boolean deep = Bank.isProtectedAt(depth.feet());
        if (TrenchLimits.isEngineered(depth)) {
            return new Duty("trench-over-20", Severity.STOP, TrenchLimits.ENGINEER_SOURCE, List.of(), place);
        }
        if (bank.protection() == Protection.SHIELDED) {
            return new Duty("shield", Severity.MUST, PROTECTION + "; 1926.652(g)", List.of(), place);
        }
        if (bank.protection() == Protection.UPRIGHT || !place.laidBack()) {
            return deep ? new Duty("upright-too-deep", Severity.STOP, PROTECTION, List.of(), place) : shallow(place);
        }
        return bank.protection() == Protection.BENCHED ? benched(place, deep) : sloped(place, deep);
    }

    /** A bank in steps; where the trench is too shallow to need them, its first step is an upright bank. */
    private static Duty benched(Place place, boolean deep) {
        return deep
                ? new Duty(
                        "bench-back",
                        Severity.MUST,
                        Benching.SOURCE,
                        List.of(
                                "rise",
                                Benching.RISE.text(),
                                "run",
                                tidy(place.bank().slope().number())),
                        place)
                : shallow(place);
    }

    /** Under 5 ft an upright bank is lawful only where nothing shows that it could fall; seeping water shows it. */
    private static Duty shallow(Place place) {
        return place.seeping()
                ? new Duty("upright-seeping", Severity.MUST, PROTECTION + "(ii); Subpart P App. A", List.of(), place)
                : new Duty("upright-shallow", Severity.MUST, PROTECTION, List.of(), place);
    }

    /** A bank that is laid back; where the trench is too shallow to need it that is only told. */
    private static Duty sloped(Place place, boolean deep) {
        double run = place.bank().slope().number();
        double lawful = SlopeTable.run(place.bank().soil());
        if (run < lawful) {
            return new Duty(
                    "bank-too-steep",
                    deep ? Severity.STOP : Severity.MUST,
                    SlopeTable.SOURCE + "; 1926.652(b)(1)",
                    List.of("run", tidy(run), "lawful", tidy(lawful)),
                    place);
        }
        return deep
                ? new Duty("slope-back", Severity.MUST, SlopeTable.SOURCE, List.of("run", tidy(run)), place)
                : new Duty("slope-shallow", Severity.ADVISE, PROTECTION, List.of("run", tidy(run)), place);
    }

    /** A bank's run for each foot of rise, as findings print it. */
    static String tidy(double run) {
        return new BigDecimal(Digits.fixed(run, 2)).stripTrailingZeros().toPlainString();
    }
}
