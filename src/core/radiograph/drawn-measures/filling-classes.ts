import pess from "../../../../data/pess-2020/source.json" with { type: "json" };
import schaeffer from "../../../../data/schaeffer-2005/source.json" with { type: "json" };
import type { Interval } from "../../basis.ts";

interface ClassOfShort {
  readonly name: string;
  /** Over this, mm short of the apex; 0 itself belongs to the class that begins there. */
  readonly from: number | null;
  /** Up to this and with it; without it where it is 0. */
  readonly to: number | null;
}

/** The published groups of where fillings end, each source by itself. @source data/pess-2020, data/schaeffer-2005 (seen) */
const published: readonly { readonly id: string; readonly classes: readonly ClassOfShort[] }[] = [
  {
    id: pess.id,
    classes: pess.classesShortMm.map(({ name, says, from, to }) => ({ name: `${name}, ${says}`, from, to })),
  },
  { id: schaeffer.id, classes: schaeffer.classesShortMm },
];

/**
 * The published classes of a filling's end, and every class that its interval reaches.
 * Takes mm short of the apex (below 0 beyond it), and the interval where there is one.
 * @source data/pess-2020 and data/schaeffer-2005 (seen); docs/methods/filling-end C5
 */
export function fillingClasses(shortMm: number, interval: Interval | undefined) {
  const [low, high] = interval === undefined ? [shortMm, shortMm] : [interval.low, interval.high];
  return published.map(({ id, classes }) => {
    const reached = classes.filter((one) => isIn(one, low) || isIn(one, high) || liesBetween(one, low, high));
    return {
      source: id,
      class: classes.find((one) => isIn(one, shortMm))?.name ?? "",
      within: reached.map(({ name }) => name),
    };
  });
}

function isIn({ from, to }: ClassOfShort, shortMm: number): boolean {
  const above = from === null || (from === 0 ? shortMm >= 0 : shortMm > from);
  return above && (to === null || (to === 0 ? shortMm < 0 : shortMm <= to));
}

const liesBetween = ({ from, to }: ClassOfShort, low: number, high: number): boolean =>
  from !== null && to !== null && from >= low && to <= high;
