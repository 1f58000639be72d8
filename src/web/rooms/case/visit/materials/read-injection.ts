import type { BodyOf } from "../../../../../record/parts.ts";
import { mistakenPercent, mistakenRatio } from "../../../../../record/unusual-amounts.ts";
import { agentWords, vasoconstrictorWords } from "../../../../../record/words/visit-words.ts";
import { type AmountWanted, asTyped, oneOf, type RowRead, readAmounts, type Typed } from "./read-typed.ts";

/** One injection of a visit. */
export type Injection = BodyOf<"visit">["anaesthetic"][number];
/** A solution in its cartridge. */
export type Solution = Omit<Injection, "cartridges" | "technique" | "atMin" | "confirmed">;

/** What is chosen where a solution holds no vasoconstrictor. */
export const plain = "plain";

const solutionWanted: readonly AmountWanted[] = [
  { at: "percent", unit: "%", low: 0.1, high: 5, needed: "the strength is needed, as 4", mistaken: mistakenPercent },
  { at: "cartridgeMl", unit: "ml", low: 0.5, high: 3, needed: "the volume of a cartridge is needed, as 1.8" },
];
const ratioWanted: AmountWanted = {
  ...{ at: "ratio", unit: "", low: 10_000, high: 1_000_000 },
  ...{ needed: "the ratio is needed; 1:100000 is written 100000", mistaken: mistakenRatio },
};
const iuWanted: AmountWanted = {
  ...{ at: "iuPerMl", unit: "IU/ml", low: 0.000_001, high: 1, needed: "units a ml are needed, as 0.03" },
};
const amountWanted: readonly AmountWanted[] = [
  {
    ...{ at: "cartridges", unit: "cartridges", low: 0.01, high: 30, needed: "how many cartridges were given?" },
    mistaken: (value) => (value === 0 ? "0 cartridges are no injection" : undefined),
  },
  { at: "atMin", unit: "min", low: 0, high: 600 },
];

/** The solution that the fields tell; none while something of it is missing. */
export function readSolution(typed: Typed): RowRead<Solution> {
  const agent = oneOf(agentWords, typed.agent ?? "");
  const name = typed.vasoconstrictor ?? "";
  const constrictor = oneOf(vasoconstrictorWords, name);
  const strength = constrictor === undefined ? [] : [constrictor === "felypressin" ? iuWanted : ratioWanted];
  const { values, faults } = readAmounts(typed, [...solutionWanted, ...strength]);
  const all = {
    ...faults,
    ...(agent === undefined ? { agent: "the agent is needed" } : {}),
    ...(constrictor === undefined && name !== plain
      ? { vasoconstrictor: "with which vasoconstrictor? plain where there is none" }
      : {}),
  };
  const { percent, cartridgeMl, ...amount } = values;
  if (Object.keys(all).length > 0 || agent === undefined || percent === undefined || cartridgeMl === undefined)
    return { faults: all };
  const vasoconstrictor = constrictor === undefined ? {} : { vasoconstrictor: { name: constrictor, ...amount } };
  return { row: { agent, percent, ...vasoconstrictor, cartridgeMl }, faults: all };
}

/** The injection that the fields tell. */
export function readInjection(typed: Typed): RowRead<Injection> {
  const solution = readSolution(typed);
  const { values, faults } = readAmounts(typed, amountWanted);
  const all = { ...solution.faults, ...faults };
  const { cartridges, atMin } = values;
  if (Object.keys(all).length > 0 || solution.row === undefined || cartridges === undefined) return { faults: all };
  const technique = (typed.technique ?? "").trim();
  return {
    faults: all,
    row: {
      ...solution.row,
      cartridges,
      ...(technique === "" ? {} : { technique }),
      ...(atMin === undefined ? {} : { atMin }),
    },
  };
}

/** A solution as it stands in the fields. */
export const solutionTyped = ({ agent, percent, vasoconstrictor, cartridgeMl }: Solution): Typed => ({
  ...{ agent, percent: asTyped(percent), cartridgeMl: asTyped(cartridgeMl) },
  vasoconstrictor: vasoconstrictor?.name ?? plain,
  ratio: asTyped(vasoconstrictor?.ratio),
  iuPerMl: asTyped(vasoconstrictor?.iuPerMl),
});

/** A solution in words: `lidocaine 2 %, epinephrine 1:100000`. */
export function solutionInWords({ agent, percent, vasoconstrictor }: Omit<Solution, "cartridgeMl">): string {
  const strength = `${agentWords[agent]} ${percent} %`;
  if (vasoconstrictor === undefined) return `${strength}, plain`;
  const { name, ratio, iuPerMl } = vasoconstrictor;
  const of = ratio === undefined ? (iuPerMl === undefined ? "" : ` ${iuPerMl} IU/ml`) : ` 1:${ratio}`;
  return `${strength}, ${vasoconstrictorWords[name]}${of}`;
}

/** `1 cartridge`, `1.5 cartridges`. */
export const cartridgesInWords = (count: number): string => `${count} ${count === 1 ? "cartridge" : "cartridges"}`;
