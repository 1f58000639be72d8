import type { SolutionAsked, SolutionName } from "./irrigation-input.ts";

const acids: readonly string[] = ["citric acid", "maleic acid", "phosphoric acid"] satisfies SolutionName[];
const rinses: readonly string[] = ["saline", "sterile water", "ethanol"] satisfies SolutionName[];

/** A solution as it is told. */
export const nameOf = (solution: SolutionAsked): string => (typeof solution === "string" ? solution : solution.own);

/** Whether a solution is acid enough to set chlorine free. */
export const isAcid = (name: string): boolean => acids.includes(name);

/** Whether a solution binds the minerals of dentine. */
export const isChelator = (name: string): boolean => name === "EDTA" || isAcid(name);

/** Whether a solution counts as a rinse between two others (common practice). */
export const isRinse = (solution: SolutionAsked): boolean => typeof solution === "string" && rinses.includes(solution);

/** Strengths that are believed, in percent; water has none. */
export const believedPercent: Readonly<Partial<Record<SolutionName, readonly [number, number]>>> = {
  "sodium hypochlorite": [0.1, 15],
  EDTA: [1, 25],
  chlorhexidine: [0.05, 20],
  "citric acid": [1, 60],
  "maleic acid": [1, 40],
  "phosphoric acid": [1, 50],
  "hydrogen peroxide": [1, 35],
  iodine: [0.1, 15],
  saline: [0.4, 10],
  ethanol: [10, 100],
};
