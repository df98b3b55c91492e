// SPDX-License-Identifier: Apache-2.0
/** Cost sheet and feedback sheet: the only papers that see costs. */
package spadework.paperwork.cost;
