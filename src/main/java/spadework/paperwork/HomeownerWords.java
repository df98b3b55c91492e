// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import spadework.finding.Phrases;

/** Words in the language of the homeowner: short ones, and those for findings. */
public record HomeownerWords(PaperWords terms, Phrases phrases) {}
