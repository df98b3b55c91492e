// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Everything can be undone, and what was undone can be done again. */
class HistoryTest {
    private static final Draft EMPTY = Draft.empty();

    private static Draft title(String words) {
        return EMPTY.typed("/title", words);
    }

    @Test
    void wordTypedLetterByLetterIsOneStep() {
        History history = History.ofSaved(EMPTY)
                .edited(title("B"), "/title")
                .edited(title("Ba"), "/title")
                .edited(title("Back"), "/title");
        assertThat(history.undone().now()).isEqualTo(EMPTY);
        assertThat(history.undone().redone().now()).isEqualTo(title("Back"));
    }

    @Test
    void leavingTheFieldEndsTheStep() {
        History history =
                History.ofSaved(EMPTY).edited(title("B"), "/title").settled().edited(title("Ba"), "/title");
        assertThat(history.undone().now()).isEqualTo(title("B"));
        assertThat(history.undone().undone().now()).isEqualTo(EMPTY);
    }

    @Test
    void whatIsTypedBackIsNoStep() {
        History history =
                History.ofSaved(title("a")).edited(title("ab"), "/title").edited(title("a"), "/title");
        assertThat(history.undone()).isEqualTo(history);
    }

    @Test
    void stepsGoBackWithoutLimit() {
        History history = History.ofSaved(EMPTY);
        for (int i = 0; i < 10_000; i++) {
            history = history.edited(title("step " + i), "");
        }
        for (int i = 0; i < 10_000; i++) {
            history = history.undone();
        }
        assertThat(history.now()).isEqualTo(EMPTY);
        assertThat(history.isSaved()).isTrue();
        assertThat(history.undone()).isEqualTo(history);
    }

    @Test
    void editAfterUndoEndsWhatCouldBeRedone() {
        History history = History.ofSaved(EMPTY).edited(title("a"), "").undone().edited(title("b"), "");
        assertThat(history.redone().now()).isEqualTo(title("b"));
    }

    @Test
    void markTellsWhetherTheFileHasIt() {
        History history = History.ofNew(EMPTY);
        assertThat(history.isSaved()).isFalse();
        History saved = history.edited(title("a"), "").savedNow();
        assertThat(saved.isSaved()).isTrue();
        assertThat(saved.undone().isSaved()).isFalse();
        assertThat(saved.undone().redone().isSaved()).isTrue();
        assertThat(saved.edited(title("b"), "").edited(title("a"), "").isSaved())
                .as("typed back")
                .isTrue();
    }
}
