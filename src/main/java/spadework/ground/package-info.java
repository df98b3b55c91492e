// SPDX-License-Identifier: Apache-2.0
/**
 * Everything that is dug, as bodies with an outline, levels and a bank: what trenches of neighboring walls share, the
 * ends of a trench that stops in the open, how high the stone stands along the pipe. It measures ground; quantities
 * that are bought are made of it in the takeoff.
 */
package spadework.ground;
