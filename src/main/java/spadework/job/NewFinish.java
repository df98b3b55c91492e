// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** Another finish for the wall with that label. */
public record NewFinish(String wall, Finish finish) {}
