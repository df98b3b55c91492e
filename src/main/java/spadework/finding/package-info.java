// SPDX-License-Identifier: Apache-2.0
/** What is noticed: findings about a job, faults in a file, and the words for them. */
package spadework.finding;
