import type { RoomLook } from "./room-look.ts";
import type { ZoneName } from "./room-modes.ts";
import type { Zone } from "./solvent-output.ts";
import { short, thinned } from "./thinned.ts";

const evenPoints = 150;
/** After each change of law: what happens at once in a small zone is drawn as well. */
const soonAfterMin = [0.01, 0.03, 0.1, 0.3, 1, 3];

/**
 * The times at which the concentrations are told: evenly until all zones fell below a hundredth of their peaks, closer after each
 * change, and a moment before each dose that comes at once.
 */
export function seriesTimes({ course, reading, figures }: RoomLook, jumpsAt: readonly number[]): number[] {
  const { startMin, pieces, end } = course;
  const zones = (["far", "near"] as const).filter((zone) => figures[zone] !== undefined);
  const still = (at: number) =>
    zones.some((zone) => (reading[zone]?.levelAt(at) ?? 0) > (figures[zone]?.peak ?? 0) / 100);
  const lastDose = Math.max(startMin, end.atMin - 480);
  let until = Math.min(end.atMin, lastDose + 10);
  for (let at = until; at < end.atMin; at += 1) if (still(at)) until = Math.min(end.atMin, at + 1);
  const even = Array.from({ length: evenPoints + 1 }, (_, at) => startMin + ((until - startMin) * at) / evenPoints);
  const changes = pieces.flatMap(({ startMin: from }) => [from, ...soonAfterMin.map((after) => from + after)]);
  const before = jumpsAt.filter((at) => at > startMin).map((at) => at - 1e-6);
  return [...new Set([...even, ...changes, ...before])].filter((at) => at <= until).sort((x, y) => x - y);
}

/**
 * The concentration of one zone: of the middle rate, and the least and most over all of them; at as many of these times as straight
 * lines between need to be within 2 %.
 */
export function zoneSeries(
  zone: ZoneName,
  times: readonly number[],
  middle: RoomLook,
  all: readonly RoomLook[],
): Zone["series"] {
  const levels = all.map(({ reading }) => times.map((tMin) => reading[zone]?.levelAt(tMin) ?? 0));
  return thinned(times, levels).map((at) => {
    const tMin = times[at] ?? 0;
    const now = levels.map((one) => one[at] ?? 0);
    const band = { lowMgM3: short(Math.min(...now)), highMgM3: short(Math.max(...now)) };
    return { tMin, mgM3: short(middle.reading[zone]?.levelAt(tMin) ?? 0), ...(all.length > 1 ? band : {}) };
  });
}
