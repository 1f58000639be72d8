import pess from "../../../../data/pess-2021/source.json" with { type: "json" };
import type { Interval } from "../../basis.ts";

/** The class of a diameter: S1 to 3, S2 over 3 to 5, S3 over 5 mm. @source data/pess-2021 (seen) */
const classOf = (diameterMm: number): string =>
  pess.classesMm.find(({ to }) => to === null || diameterMm <= to)?.name ?? "";

/**
 * The published class of a lesion's size, and every class that its interval reaches.
 * Takes the largest diameter in mm, and its interval where it has one.
 * @source data/pess-2021 (seen); docs/methods/lesion C7
 */
export function sizeClassOf(diameterMm: number, interval: Interval | undefined) {
  const [low, high] = interval === undefined ? [diameterMm, diameterMm] : [interval.low, interval.high];
  const bounds = pess.classesMm.flatMap(({ to }) => (to !== null && to >= low && to < high ? [to] : []));
  const within = [...new Set([low, ...bounds, high].map(classOf))];
  return { source: pess.id, class: classOf(diameterMm), within };
}
