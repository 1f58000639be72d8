import type { Confirmable, Solution } from "./anaesthetic-input.ts";
import type { Unlikely } from "./unlikely-mass.ts";

interface Usual {
  readonly low: number;
  readonly high: number;
}

/** Strengths in use, in percent (common practice); of other agents any from 0.1 to 5. */
const usualPercent: ReadonlyMap<string, Usual> = new Map([
  ["articaine", { low: 2, high: 4 }],
  ["lidocaine", { low: 0.5, high: 4 }],
  ["mepivacaine", { low: 1, high: 3 }],
  ["prilocaine", { low: 1, high: 4 }],
  ["bupivacaine", { low: 0.125, high: 0.75 }],
]);
const anyPercent: Usual = { low: 0.1, high: 5 };
const believedPercent: Usual = { low: 0.1, high: 10 };
/** Levonordefrin comes as 1:20000; a nought more or less would count a tenth of it, or ten times as much. */
const usualRatio: Readonly<Record<"epinephrine" | "levonordefrin", Usual>> = {
  epinephrine: { low: 50_000, high: 400_000 },
  levonordefrin: { low: 20_000, high: 20_000 },
};
const believedRatio: Usual = { low: 10_000, high: 1_000_000 };
const usualIu: Usual = { low: 0.01, high: 0.06 };
const usualMl: Usual = { low: 1, high: 2.5 };

/**
 * What can't be, or is unlikely, of one solution: percent and share mixed up, a ratio written as its reciprocal or as
 * micrograms, a volume in the wrong unit, a vasoconstrictor in another's unit.
 * @source common practice; docs/methods/anaesthetic.md C10
 */
export function unlikelySolution(solution: Solution, path: string): Unlikely[] {
  const { agent, percent, cartridgeMl } = solution;
  const usual = usualPercent.get(agent) ?? anyPercent;
  return [
    ...(within(percent, believedPercent)
      ? unusual(percent, usual, { path, name: "percent", of: ` of ${agent}` })
      : [{ path: `${path}.percent`, says: mixedPercent(percent), confirmable: false }]),
    ...unlikelyVasoconstrictor(solution, `${path}.vasoconstrictor`),
    ...unusual(cartridgeMl, usualMl, { path, name: "cartridgeMl", of: " of a cartridge" }),
  ];
}

const mixedPercent = (percent: number): string =>
  percent < believedPercent.low
    ? `${percent} is no strength in percent; 4 % is written 4, not 0.04`
    : `${percent} is no strength in percent; 40 mg/ml are 4 %, written 4`;

function unlikelyVasoconstrictor({ vasoconstrictor }: Solution, path: string): Unlikely[] {
  if (vasoconstrictor === undefined) return [];
  const { name, ratio, iuPerMl } = vasoconstrictor;
  const fault = (field: string, says: string): Unlikely[] => [{ path: `${path}.${field}`, says, confirmable: false }];
  if (name === "felypressin") {
    if (ratio !== undefined) return fault("ratio", "felypressin is given in international units a ml: give iuPerMl");
    if (iuPerMl === undefined) return fault("iuPerMl", "nothing is given; 0.03 IU/ml is written 0.03");
    return unusual(iuPerMl, usualIu, { path, name: "iuPerMl", of: " of felypressin" });
  }
  if (iuPerMl !== undefined) return fault("iuPerMl", `${name} is given as a ratio: 1:100000 is written 100000`);
  if (ratio === undefined) return fault("ratio", "nothing is given; 1:100000 is written 100000");
  if (within(ratio, believedRatio)) return unusual(ratio, usualRatio[name], { path, name: "ratio", of: ` of ${name}` });
  return fault("ratio", `${ratio} is no ratio of a cartridge; ${mixedRatio(ratio)}`);
}

function mixedRatio(ratio: number): string {
  if (ratio > 0 && ratio < 1) return "1:100000 is written 100000, not 0.00001";
  if (ratio <= 0) return "1:100000 is written 100000";
  if (ratio <= 50) return "10 micrograms a ml are 1:100000, written 100000";
  return "1:100000 is written 100000; 1:1000 is the strength for emergencies";
}

const within = (value: number, { low, high }: Usual): boolean => value >= low && value <= high;

function unusual(
  value: number,
  usual: Usual,
  { path, name, of }: { readonly path: string; readonly name: Confirmable; readonly of: string },
): Unlikely[] {
  if (within(value, usual)) return [];
  const range = usual.low === usual.high ? usual.low : `${usual.low} to ${usual.high}`;
  const says = `${value} is unusual${of} (${range} is usual): confirm ${name} if it is so`;
  return [{ path: `${path}.${name}`, says, confirmable: true }];
}
