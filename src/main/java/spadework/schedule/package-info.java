// SPDX-License-Identifier: Apache-2.0
/**
 * The calendar of the crews: hours of the takeoff's lines laid onto working days in the order of the scope of work,
 * and what is counted on that calendar. It knows no price.
 */
package spadework.schedule;
