import parashos from "../../../data/parashos-2004/source.json" with { type: "json" };
import sattapan from "../../../data/sattapan-2000/source.json" with { type: "json" };
import shen from "../../../data/shen-2007/source.json" with { type: "json" };
import { betaDraw } from "../statistics/beta-draw.ts";
import type { SeededRandom } from "../statistics/seeded-random.ts";
import { ofEach } from "./break-facts.ts";
import type { OfEach } from "./fracture-input.ts";

/** A published series that split its broken instruments into torsional and bending breaks. */
export interface SplitSeries {
  readonly series: string;
  readonly n: number;
  readonly N: number;
  readonly source: string;
  readonly verification: "seen" | "memory";
}

/** The series that the prior rests on; they conflict, and each is weighed alike. */
export const splitSeries: readonly SplitSeries[] = [
  {
    series: "rotary, one practice",
    n: sattapan.torsional.n,
    N: sattapan.torsional.N,
    source: sattapan.id,
    verification: "seen",
  },
  { series: "used by hand", n: shen.torsional.n, N: shen.torsional.N, source: shen.id, verification: "seen" },
  {
    series: "rotary, 14 practices",
    n: parashos.torsional.n,
    N: parashos.torsional.N,
    source: parashos.id,
    verification: "memory",
  },
];

/** The share of torsional among torsional and bending breaks by one series: n of N with the prior of Jeffreys. */
export const torsionalShare = ({ n, N }: SplitSeries): number => (n + 0.5) / (N + 1);

/** The same by all of them, weighed alike. */
export const meanTorsionalShare = (): number =>
  splitSeries.reduce((sum, one) => sum + torsionalShare(one), 0) / splitSeries.length;

/** A share as one of the series, by chance, allows it. */
export function drawnTorsionalShare(random: SeededRandom): number {
  const chosen = splitSeries[Math.floor(random.uniform() * splitSeries.length)];
  return chosen === undefined ? 0.5 : betaDraw(random, chosen.n + 0.5, chosen.N - chosen.n + 0.5);
}

/** The prior of each explanation from the share of flaws among all breaks and of torsion among the others. */
export const priorOf = (flaw: number, torsional: number): OfEach =>
  ofEach((name) => {
    if (name === "flawOrJoint") return flaw;
    return (1 - flaw) * (name === "torsionalOverload" ? torsional : 1 - torsional);
  });
