// SPDX-License-Identifier: Apache-2.0
package spadework;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.Executable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What may be missing is answered as an Optional, never handed on as one. */
class OptionalParametersTest {

    @Test
    void noMethodTakesAnOptional() {
        Set<String> wrong = ArchitectureTest.SHIPPED.stream()
                .filter(one -> ArchitectureTest.isWrittenByHand(one.getName()))
                .map(JavaClass::reflect)
                .filter(one -> writtenByHand(one)
                        .anyMatch(each -> List.of(each.getParameterTypes()).contains(Optional.class)))
                .map(Class::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(wrong).isEmpty();
    }

    /** A record's constructor takes its components, as its accessors answer with them. */
    private static Stream<Executable> writtenByHand(Class<?> one) {
        Executable[] built = one.isRecord() ? new Executable[0] : one.getDeclaredConstructors();
        Executable[] methods = one.getDeclaredMethods();
        return Stream.of(built, methods).flatMap(Arrays::stream).filter(each -> !each.isSynthetic());
    }
}
