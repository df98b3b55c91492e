// SPDX-License-Identifier: Apache-2.0
/**
 * The house from above, in four steps. What the job says is first put in feet around the house ({@code PipeLayout},
 * {@code Surroundings}). {@code PlanBands} then says how far from the house each thing is drawn, and {@code PlanFrame}
 * turns feet into points. Lines and symbols are drawn next. Names come last: each is a {@code LabelRequest} that the
 * {@code LabelPlacer} grants where nothing else is; what finds no room stands in the key below the figure.
 *
 * <p>What was measured is to scale where the sheet has room for it; what is not bears a break mark and its figure.
 * Where pipes lie beside the house, and where trees stand along a wall, was not measured.
 */
package spadework.drawing.plan;
