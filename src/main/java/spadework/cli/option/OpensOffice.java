// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

/** A command that opens the office itself; every other is taken in it. */
public interface OpensOffice {}
