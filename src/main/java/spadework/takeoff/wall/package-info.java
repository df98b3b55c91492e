/** One wall: its trench and its face. */
package spadework.takeoff.wall;
