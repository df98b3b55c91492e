// SPDX-License-Identifier: Apache-2.0
/**
 * The contractor: wages, crews, machines, price rules, tax mode, standing terms. It knows no single job's figures.
 */
package spadework.company;
