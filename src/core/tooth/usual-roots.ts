import type { CanalRoot } from "./canal-root.ts";

/** The roots and canals that a tooth usually has, as the start of an editor; and the numbers of roots that surprise nobody. */
export interface UsualRoots {
  readonly roots: readonly CanalRoot[];
  /** Least and greatest number of roots that is not worth a second look. */
  readonly fewestRoots: number;
  readonly mostRoots: number;
  /** No published source: what is taught. */
  readonly basis: "common practice";
}

const single: readonly CanalRoot[] = [{ name: "R", levels: [1], orifices: ["Single"] }];
const buccalAndPalatal: readonly CanalRoot[] = [
  { name: "B", side: "buccal", levels: [1] },
  { name: "P", side: "lingual", levels: [1] },
];
const upperThree = (mesiobuccal: CanalRoot): readonly CanalRoot[] => [
  mesiobuccal,
  { name: "DB", side: "buccal", levels: [1] },
  { name: "P", side: "lingual", levels: [1] },
];
const upperFirstMolar = upperThree({ name: "MB", side: "buccal", levels: [2, 1], orifices: ["MB1", "MB2"] });
const upperMolar = upperThree({ name: "MB", side: "buccal", levels: [1] });
const lowerTwo: readonly CanalRoot[] = [
  { name: "M", levels: [2], orifices: ["MB", "ML"] },
  { name: "D", levels: [1] },
];

const usual = (roots: readonly CanalRoot[], fewestRoots: number, mostRoots: number): UsualRoots => ({
  roots,
  fewestRoots,
  mostRoots,
  basis: "common practice",
});
const oneRoot = usual(single, 1, 1);

/** By arch and position; primary positions carry a letter. The third root of a lower first molar is common enough to pass. */
const byPosition: Readonly<Record<string, UsualRoots>> = {
  upper4: usual(buccalAndPalatal, 1, 2),
  upper5: usual(single, 1, 2),
  upper6: usual(upperFirstMolar, 3, 3),
  upper7: usual(upperMolar, 2, 3),
  upper8: usual(upperMolar, 1, 3),
  lower6: usual(lowerTwo, 2, 3),
  lower7: usual(lowerTwo, 1, 2),
  lower8: usual(lowerTwo, 1, 2),
  upperD: usual(upperMolar, 3, 3),
  upperE: usual(upperMolar, 3, 3),
  lowerD: usual(lowerTwo, 2, 2),
  lowerE: usual(lowerTwo, 2, 3),
};

/**
 * The usual roots and canals of a tooth.
 * Takes a two-digit number of ISO 3950; gives a lone root with one canal for every front tooth.
 * @source common practice; docs/methods/canals, C8
 */
export function usualRoots(twoDigit: string): UsualRoots {
  const [quadrant = "", position = ""] = twoDigit;
  const primary = "5678".includes(quadrant);
  const arch = "1256".includes(quadrant) ? "upper" : "lower";
  const key = primary ? ["", "A", "B", "C", "D", "E"][Number(position)] : position;
  return byPosition[`${arch}${key ?? ""}`] ?? oneRoot;
}
