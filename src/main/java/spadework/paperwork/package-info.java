// SPDX-License-Identifier: Apache-2.0
/**
 * One finished record for each paper, with every figure and text that the paper prints. The templates receive these
 * and nothing else; how they are set, and on what, is not known here.
 */
package spadework.paperwork;
