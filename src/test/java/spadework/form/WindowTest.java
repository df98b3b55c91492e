// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/** A test that opens windows: it runs in a process of its own, on a screen in memory or on a real one. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("window")
@ExtendWith(Screen.class)
public @interface WindowTest {}
