// SPDX-License-Identifier: Apache-2.0
package spadework;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No record has more than 12 components, no method and no constructor written by hand more than 6 parameters. */
class SizeRulesTest {
    private static final int COMPONENTS = 12;
    private static final int PARAMETERS = 6;

    @Test
    void noRecordHasMoreThanTwelveComponents() {
        Set<String> large = shipped()
                .filter(Class::isRecord)
                .filter(one -> one.getRecordComponents().length > COMPONENTS)
                .map(SizeRulesTest::name)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(large).isEmpty();
    }

    @Test
    void noMethodHasMoreThanSixParameters() {
        Set<String> many = shipped()
                .flatMap(one -> Stream.concat(
                        Arrays.stream(one.getDeclaredMethods()).filter(method -> !method.isSynthetic()),
                        Arrays.stream(one.getDeclaredConstructors())
                                .filter(built -> !built.isSynthetic() && !isCanonical(built))))
                .filter(one -> parameters(one) > PARAMETERS)
                .map(SizeRulesTest::name)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(many).isEmpty();
    }

    private static Stream<Class<?>> shipped() {
        return ArchitectureTest.SHIPPED.stream()
                .filter(one -> ArchitectureTest.isWrittenByHand(one.getName()))
                .map(JavaClass::reflect)
                .filter(one -> !one.isAnonymousClass() && !one.isSynthetic());
    }

    /** The constructor of a record that takes its components: written or not, it is as long as the record. */
    private static boolean isCanonical(Constructor<?> built) {
        return built.getDeclaringClass().isRecord()
                && built.getParameterCount() == built.getDeclaringClass().getRecordComponents().length;
    }

    /** Without the enclosing object of an inner class, and without name and number of a constant. */
    private static int parameters(Executable one) {
        Class<?> in = one.getDeclaringClass();
        if (one instanceof Method) {
            return one.getParameterCount();
        }
        boolean inner = in.getEnclosingClass() != null && !Modifier.isStatic(in.getModifiers());
        return one.getParameterCount() - (in.isEnum() ? 2 : inner ? 1 : 0);
    }

    private static String name(Class<?> one) {
        return one.getName().substring("spadework.".length());
    }

    private static String name(Executable one) {
        return name(one.getDeclaringClass()) + (one instanceof Method ? "." + one.getName() : "(new)");
    }
}
