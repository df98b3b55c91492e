// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import spadework.bids.BidStatus;
import spadework.feedback.RateRule;
import spadework.finding.Severity;
import spadework.office.portfolio.Copying.Take;

/** Words of the command line that are one of a few. */
final class EnumConverters {
    private EnumConverters() {}

    /** Where a bid stands. */
    static final class OfStanding implements ITypeConverter<BidStatus> {
        @Override
        public BidStatus convert(String typed) {
            return word(BidStatus.class, typed);
        }
    }

    /** How a rate is drawn from jobs. */
    static final class OfRule implements ITypeConverter<RateRule> {
        @Override
        public RateRule convert(String typed) {
            return word(RateRule.class, typed);
        }
    }

    /** What is taken over from an old bid. */
    static final class OfTake implements ITypeConverter<Take> {
        @Override
        public Take convert(String typed) {
            return word(Take.class, typed);
        }
    }

    /** How grave a finding is. */
    static final class OfSeverity implements ITypeConverter<Severity> {
        @Override
        public Severity convert(String typed) {
            return word(Severity.class, typed);
        }
    }

    private static <E extends Enum<E>> E word(Class<E> type, String typed) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> constant.name().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("allowed are "
                        + Arrays.stream(type.getEnumConstants())
                                .map(constant -> constant.name().toLowerCase(Locale.ROOT))
                                .collect(Collectors.joining(", "))
                        + ", not \"" + typed + "\""));
    }
}
