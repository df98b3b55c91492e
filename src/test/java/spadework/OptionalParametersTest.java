package spadework;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.Executable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** In the papers and the press, what may be missing is answered as an Optional, never handed on as one. */
class OptionalParametersTest {

    @Test
    void noMethodOfPapersAndPressTakesAnOptional() {
        List<String> wrong = ArchitectureTest.SHIPPED.stream()
                .filter(one -> one.getPackageName().matches("spadework\\.(paperwork|press)\\b.*"))
                .map(JavaClass::reflect)
                .flatMap(OptionalParametersTest::writtenByHand)
                .filter(one -> List.of(one.getParameterTypes()).contains(Optional.class))
                .map(Executable::toString)
                .toList();
        assertThat(wrong).isEmpty();
    }

    /** A record's constructor takes its components, as its accessors answer with them. */
    private static Stream<Executable> writtenByHand(Class<?> one) {
        Executable[] built = one.isRecord() ? new Executable[0] : one.getDeclaredConstructors();
        Executable[] methods = one.getDeclaredMethods();
        return Stream.of(built, methods).flatMap(Arrays::stream).filter(each -> !each.isSynthetic());
    }
}
