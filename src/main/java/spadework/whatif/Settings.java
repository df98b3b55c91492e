// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import spadework.company.Company;
import spadework.company.PriceRules;
import spadework.company.ProfitBasis;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.job.Access;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.measure.UnreadableMeasure;

/**
 * What is otherwise, as it is typed: {@code margin=15%,soil=C}.
 *
 * @param change from the job as it is
 * @param faults of what was typed; with one of them the change is not to be used
 */
public record Settings(UnaryOperator<Case> change, List<Fault> faults) {
    /** What may be otherwise, by the name that is typed. */
    private static final Map<String, SettingReader> READERS = readers();

    public Settings {
        faults = List.copyOf(faults);
    }

    /**
     * Reads settings that are parted by commas.
     *
     * @param company whose crews may be named
     */
    public static Settings read(String typed, Company company) {
        UnaryOperator<Case> all = UnaryOperator.identity();
        List<Fault> faults = new ArrayList<>();
        for (Map.Entry<String, String> one : pairs(typed)) {
            try {
                UnaryOperator<Case> before = all;
                UnaryOperator<Case> next = change(one.getKey(), one.getValue(), company);
                all = job -> next.apply(before.apply(job));
            } catch (UnreadableMeasure unreadable) {
                faults.add(new Fault(
                        Place.ofFile("--with " + one.getKey()),
                        "\"" + one.getValue() + "\"",
                        unreadable.allowed(),
                        unreadable.fix()));
            }
        }
        return new Settings(all, faults);
    }

    /** Names and values in their order; a part without {@code =} is a name without value. */
    static List<Map.Entry<String, String>> pairs(String typed) {
        List<Map.Entry<String, String>> pairs = new ArrayList<>();
        for (String part : typed.split(",")) {
            String[] sides = part.split("=", 2);
            if (!part.isBlank()) {
                pairs.add(Map.entry(sides[0].strip(), sides.length == 2 ? sides[1].strip() : ""));
            }
        }
        return pairs;
    }

    private static UnaryOperator<Case> change(String name, String value, Company company) throws UnreadableMeasure {
        SettingReader reader = READERS.get(name);
        if (reader == null) {
            throw new UnreadableMeasure(String.join(", ", READERS.keySet()), "write one of these before the \"=\"");
        }
        return reader.read(value, company);
    }

    private static Map<String, SettingReader> readers() {
        Map<String, SettingReader> readers = new LinkedHashMap<>();
        readers.put("margin", (value, company) -> profit(ProfitBasis.MARGIN, share(value, 0, 95)));
        readers.put("markup", (value, company) -> profit(ProfitBasis.MARKUP, share(value, 0, 500)));
        readers.put("overhead", (value, company) -> rules(share(value, 0, 200), PriceRules::withOverhead));
        readers.put("contingency", (value, company) -> rules(share(value, 0, 100), PriceRules::withContingency));
        readers.put(
                "production",
                (value, company) -> production(share(value, 10, 500).fraction()));
        readers.put("crew", Settings::crew);
        readers.put("soil", (value, company) -> soil(word(SoilType.class, value)));
        readers.put("depth", (value, company) -> depth(value));
        readers.put("access", (value, company) -> access(word(Access.class, value)));
        readers.put("protection", (value, company) -> dug(value));
        return readers;
    }

    /** How a setting is read from what is typed for it. */
    private interface SettingReader {
        UnaryOperator<Case> read(String value, Company company) throws UnreadableMeasure;
    }

    private static UnaryOperator<Case> rules(Percent share, BiFunction<PriceRules, Percent, PriceRules> with) {
        return job -> job.with(rules -> with.apply(rules, share));
    }

    private static UnaryOperator<Case> production(BigDecimal factor) {
        return job -> job.producing(factor);
    }

    private static UnaryOperator<Case> soil(SoilType type) {
        return job -> job.in(type);
    }

    private static UnaryOperator<Case> access(Access access) {
        return job -> job.dug(access);
    }

    private static UnaryOperator<Case> dug(String value) throws UnreadableMeasure {
        Optional<TrenchWay> way = TrenchWay.find(value);
        if (way.isPresent()) {
            return job -> job.dug(way.get());
        }
        Protection protection = protection(value);
        return job -> job.dug(protection);
    }

    private static UnaryOperator<Case> profit(ProfitBasis basis, Percent share) {
        return job -> job.with(rules -> rules.withBasis(basis).withProfit(share));
    }

    /** {@code wall crew} for everything, or {@code dig crew:wall crew} for what the dig crew does. */
    private static UnaryOperator<Case> crew(String value, Company company) throws UnreadableMeasure {
        String[] crews = value.split(":", 2);
        for (String crew : crews) {
            if (!company.crews().containsKey(crew.strip())) {
                throw new UnreadableMeasure(
                        "a crew of company.json, or two with a colon between: "
                                + String.join(
                                        ", ", new TreeSet<>(company.crews().keySet())),
                        "write one of them");
            }
        }
        String other = crews[crews.length - 1].strip();
        return crews.length == 2 ? job -> job.worked(crews[0].strip(), other) : job -> job.worked(other);
    }

    private static UnaryOperator<Case> depth(String value) throws UnreadableMeasure {
        boolean less = value.startsWith("-");
        Length length = Length.parse(value.replaceFirst("^[+-]", ""));
        Length more = less ? Length.ZERO.minus(length) : length;
        return job -> {
            Case deeper = job;
            for (Wall wall : job.job().walls()) {
                deeper = deeper.deeper(wall.label(), more);
            }
            return deeper;
        };
    }

    static Percent share(String value, int least, int most) throws UnreadableMeasure {
        Percent share = Percent.parse(value);
        if (share.points().compareTo(BigDecimal.valueOf(least)) < 0
                || share.points().compareTo(BigDecimal.valueOf(most)) > 0) {
            throw new UnreadableMeasure("from " + least + "% to " + most + "%", "write a share within these limits");
        }
        return share;
    }

    private static Protection protection(String value) throws UnreadableMeasure {
        try {
            return word(Protection.class, value);
        } catch (UnreadableMeasure unreadable) {
            throw new UnreadableMeasure("slope, bench, shield, hand, " + unreadable.allowed(), unreadable.fix());
        }
    }

    private static <E extends Enum<E>> E word(Class<E> type, String value) throws UnreadableMeasure {
        List<String> words = new ArrayList<>();
        for (E constant : type.getEnumConstants()) {
            String word = constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            if (word.equals(value.toLowerCase(Locale.ROOT))) {
                return constant;
            }
            words.add(word);
        }
        throw new UnreadableMeasure(String.join(", ", words), "write one of them");
    }
}
