/** The completion statement and the final account. */
package spadework.paperwork.completion;
