import { unlikelySolution } from "../core/safety/anaesthetic/unlikely-solution.ts";
import type { BodyOf } from "./parts.ts";

type Visit = BodyOf<"visit">;
type Injection = Visit["anaesthetic"][number];
/** What a cartridge holds. */
type Solution = Pick<Injection, "agent" | "percent" | "vasoconstrictor" | "cartridgeMl">;
type Irrigant = Visit["irrigation"][number];
type Dose = Visit["solvent"][number];
type Confirmable = NonNullable<NonNullable<Injection["confirmed"]>["unusual"]>[number];

/** An amount that the record takes and that is asked for once before it is recorded. */
export interface AmountAsked {
  /** The field of the row, as `percent`. */
  readonly at: string;
  readonly says: string;
  /** What the sum of the anaesthetic calls it; it has to be told that a person stands by it. */
  readonly unusual?: Confirmable;
}

/** From here on a count of cartridges is taken for millilitres; the same number as in docs/methods/anaesthetic.md C10. */
const manyCartridges = 20;
/** What one entry rarely passes (common practice): a syringe of an irrigant holds 3 to 20 ml, a canal a few drops of a solvent. */
const mostAtOnce = { irrigantMl: 60, contactMin: 60, needleMlPerMin: 15, solventMl: 1 };

/** Strengths in which solutions are sold or made up for canals, in percent (common practice). */
const soldPercent: Readonly<Partial<Record<Irrigant["solution"], readonly [low: number, high: number]>>> = {
  "sodium hypochlorite": [0.5, 8.25],
  EDTA: [5, 20],
  chlorhexidine: [0.1, 2],
  "citric acid": [5, 50],
  "maleic acid": [5, 10],
  "phosphoric acid": [5, 40],
  "hydrogen peroxide": [1, 6],
  iodine: [0.1, 10],
  saline: [0.85, 0.9],
  ethanol: [70, 100],
};

/**
 * What of a solution is asked once: strengths, ratios and cartridges that are not in use.
 * @source the thresholds of the sum of the anaesthetic (common practice); docs/methods/anaesthetic.md C10
 */
export function unusualSolution(solution: Solution): AmountAsked[] {
  const { agent, percent, vasoconstrictor, cartridgeMl } = solution;
  const asked = { agent, percent, cartridgeMl, ...(vasoconstrictor === undefined ? {} : { vasoconstrictor }) };
  return unlikelySolution(asked, "").flatMap(({ path, says, confirmable }) => {
    const at = path.replace(/^\./, "");
    const name = confirmableNames.find((one) => at.endsWith(one));
    if (!confirmable || name === undefined) return [];
    return [{ at, says: `${says.replace(/: confirm \w+ if it is so$/, "")}: is it so?`, unusual: name }];
  });
}

/**
 * What of an injection is asked once: its solution, and counts that are not in use.
 * @source the thresholds of the sum of the anaesthetic (common practice); docs/methods/anaesthetic.md C10
 */
export const unusualInjection = (injection: Injection): AmountAsked[] => [
  ...unusualSolution(injection),
  ...(injection.cartridges > manyCartridges
    ? [
        {
          at: "cartridges",
          says: `${injection.cartridges} cartridges at a time are unusual: cartridges, not ml?`,
          unusual: "cartridges" as const,
        },
      ]
    : []),
];

const confirmableNames: readonly Confirmable[] = ["percent", "ratio", "iuPerMl", "cartridgeMl"];

/**
 * What of an irrigant is asked once: volumes and times that nobody uses at once, strengths above or below those sold.
 * @source common practice
 */
export function unusualIrrigant({ solution, percent, volumeMl, minutes, needle }: Irrigant): AmountAsked[] {
  const { irrigantMl, contactMin, needleMlPerMin } = mostAtOnce;
  const flow = needle?.flowMlPerMin ?? 0;
  return [
    ...strengthAsked(solution, percent),
    ...above(volumeMl, irrigantMl, { at: "volumeMl", unit: "ml", of: "at once" }),
    ...above(minutes, contactMin, { at: "minutes", unit: "min", of: "of contact" }),
    ...above(flow, needleMlPerMin, { at: "needle.flowMlPerMin", unit: "ml/min", of: "through a needle" }),
  ];
}

function strengthAsked(solution: Irrigant["solution"], percent: number | undefined): AmountAsked[] {
  const range = soldPercent[solution];
  if (percent === undefined || range === undefined) return [];
  const [low, high] = range;
  if (percent >= low && percent <= high) return [];
  return [{ at: "percent", says: `${percent} % is unusual of ${solution} (${low} to ${high} % is usual): is it so?` }];
}

/**
 * What of a dose of solvent is asked once: a volume that nobody uses at once.
 * @source common practice
 */
export const unusualDose = ({ volumeMl }: Dose): AmountAsked[] =>
  above(volumeMl, mostAtOnce.solventMl, {
    ...{ at: "volumeMl", unit: "ml", of: "of solvent at once" },
    hint: "; 100 microlitres are written 0.1",
  });

interface Above {
  readonly at: string;
  readonly unit: string;
  readonly of: string;
  readonly hint?: string;
}

const above = (value: number, most: number, { at, unit, of, hint = "" }: Above): AmountAsked[] =>
  value <= most ? [] : [{ at, says: `${value} ${unit} ${of} are unusual (up to ${most} is usual)${hint}: is it so?` }];

/** A package that is past its day on the day of the visit. */
export function expiredAsked(name: string, expires: string | undefined, on: string): AmountAsked[] {
  if (expires === undefined || expires >= on) return [];
  return [{ at: "expires", says: `${name} expired on ${expires}: is it used all the same?` }];
}

/** What a number in the field of an anaesthetic's strength looks like where it can be no strength; undefined where it can. */
export function mistakenPercent(percent: number): string | undefined {
  if (percent >= 0.1 && percent <= 5) return undefined;
  if (percent <= 0) return "a strength is above 0; 4 % is written 4";
  if (percent < 0.1) return `${percent} looks like a share: 4 % is written 4, not 0.04`;
  if (percent >= 1_000)
    return `${percent} looks like the ratio of the vasoconstrictor (1:${percent}); the strength is in percent, as 4`;
  if (percent >= 10) return `${percent} looks like mg/ml: 40 mg/ml are 4 %, written 4`;
  return `${percent} % is above every strength of a cartridge; up to 5 is taken`;
}

/** What a number in the field of a vasoconstrictor's ratio looks like where it can be no ratio; undefined where it can. */
export function mistakenRatio(ratio: number): string | undefined {
  if (ratio >= 10_000 && ratio <= 1_000_000) return undefined;
  if (ratio <= 0) return "a ratio is above 0; 1:100000 is written 100000";
  if (ratio < 0.1) return "this looks like a share: 1:100000 is written 100000, not 0.00001";
  if (ratio <= 5) return `${ratio} looks like the strength in percent; the ratio 1:100000 is written 100000`;
  if (ratio <= 50) return `${ratio} looks like micrograms a ml: 10 micrograms a ml are 1:100000, written 100000`;
  if (ratio < 10_000) return `1:${ratio} is a strength for emergencies or a nought short; 1:100000 is written 100000`;
  return `1:${ratio} is weaker than any cartridge; 1:100000 is written 100000`;
}
