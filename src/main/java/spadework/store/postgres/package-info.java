// SPDX-License-Identifier: Apache-2.0
/** An office at home on PostgreSQL: several estimators, one book, one register. */
package spadework.store.postgres;
