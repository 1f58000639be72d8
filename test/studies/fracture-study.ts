import { type ExplanationName, explanationNames } from "../../src/core/instrument/fracture-input.ts";
import { fractureTopic } from "../../src/core/instrument/fracture-topic.ts";
import { Refusal } from "../../src/core/refusal.ts";
import { answer } from "../../src/core/topic.ts";
import { type BreakMaking, madeBreak } from "./fracture-breaks.ts";

/** One design: how its breaks are made. */
export interface FractureDesign {
  readonly name: string;
  readonly making: BreakMaking;
}

const usual: BreakMaking = {
  exponent: [1.5, 3],
  clearanceMm: [0, 0.15],
  courseError: { radius: 0.15, turnDeg: 4, startMm: 0.4 },
  mixed: 0.2,
  signs: true,
  traced: false,
};

/** The designs; the first is what the others alter. */
export const fractureDesigns: readonly FractureDesign[] = [
  { name: "all told", making: usual },
  { name: "place alone", making: { ...usual, signs: false } },
  { name: "steep exponents, 3 to 5", making: { ...usual, exponent: [3, 5] } },
  { name: "wide canals, 0.1 to 0.4 mm", making: { ...usual, clearanceMm: [0.1, 0.4] } },
  { name: "course twice as wrong", making: { ...usual, courseError: { radius: 0.3, turnDeg: 8, startMm: 0.8 } } },
  { name: "traced courses", making: { ...usual, traced: true } },
  { name: "half of them mixed", making: { ...usual, mixed: 0.5 } },
];

/** What a break came to. */
interface Judged {
  readonly truth: ExplanationName;
  readonly chances: Readonly<Record<ExplanationName, number>>;
  readonly priors: Readonly<Record<ExplanationName, number>>;
}

/** The edges of the bins of given chances. */
export const bins = [0.3, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0001] as const;

/** What a study of one design counts. */
export interface FractureCounts {
  readonly n: number;
  /** Breaks that can't be as measured, which are refused. */
  readonly refused: number;
  /** Breaks whose likeliest explanation is the true one. */
  readonly right: number;
  /** Mean logarithm of the chance given to the truth, of the answer and of the prior. */
  readonly logScore: number;
  readonly priorLogScore: number;
  /** Of the breaks whose likeliest explanation has a chance in a bin: how many, how many right. */
  readonly calibration: readonly { readonly n: number; readonly right: number }[];
}

function judged({ making }: FractureDesign, seed: number): Judged | undefined {
  const { truth, input } = madeBreak(making, seed);
  try {
    const { explanations } = answer(fractureTopic, input);
    const of = (give: (one: (typeof explanations)[number]) => number) =>
      Object.fromEntries(explanations.map((one) => [one.name, give(one)])) as Record<ExplanationName, number>;
    return { truth, chances: of(({ posterior }) => posterior.mean), priors: of(({ prior }) => prior.mean) };
  } catch (thrown) {
    if (thrown instanceof Refusal) return undefined;
    throw thrown;
  }
}

const likeliest = ({ chances }: Judged): ExplanationName =>
  explanationNames.reduce((best, name) => (chances[name] > chances[best] ? name : best));

/** The breaks `seed` to `seed + n - 1` of a design. */
export function fractureStudy(design: FractureDesign, n: number, seed: number): FractureCounts {
  const all = Array.from({ length: n }, (_, index) => judged(design, seed + index));
  const told = all.flatMap((one) => (one === undefined ? [] : [one]));
  const isRight = (one: Judged): boolean => likeliest(one) === one.truth;
  const mean = (give: (one: Judged) => number): number => told.reduce((sum, one) => sum + give(one), 0) / told.length;
  return {
    n: told.length,
    refused: n - told.length,
    right: told.filter(isRight).length,
    logScore: mean(({ chances, truth }) => Math.log(chances[truth])),
    priorLogScore: mean(({ priors, truth }) => Math.log(priors[truth])),
    calibration: bins.slice(1).map((high, index) => {
      const inside = told.filter((one) => {
        const chance = one.chances[likeliest(one)];
        return chance >= (bins[index] ?? 0) && chance < high;
      });
      return { n: inside.length, right: inside.filter(isRight).length };
    }),
  };
}
