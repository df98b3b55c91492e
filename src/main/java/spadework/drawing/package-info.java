/**
 * The job as drawings: plain shapes on a sheet, in points, without a word of how they are printed.
 *
 * <p>{@link spadework.drawing.PlanSketch} goes four steps. What the job says is first put in feet around the house
 * ({@code Waterways}, {@code Surroundings}). {@code Bands} then says how far from the house each thing is drawn, and
 * {@code Frame} turns feet into points. Lines and symbols are drawn next. Names come last: each is a {@code Wish} that
 * the {@code Placer} grants where nothing else is; what finds no room stands in the key below the figure.
 *
 * <p>Only the house and its walls are to scale, because only they were measured along the house.
 */
package spadework.drawing;
