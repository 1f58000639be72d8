import type { Fault } from "../../refusal.ts";
import type { Accuracy, Counts } from "./accuracy.ts";
import { accuraciesOf, usualAccuracy } from "./published-accuracy.ts";
import type { StrengthResult } from "./test-strength-input.ts";

/** A result with the accuracy that it is weighed by. */
export interface Weighed {
  /** Its place in the input. */
  readonly index: number;
  readonly result: StrengthResult;
  readonly accuracy: Accuracy;
  /** `input`, or the id of the published source. */
  readonly from: string;
  readonly mark?: "seen" | "memory";
  readonly method?: string | undefined;
  readonly condition?: string;
  readonly group: string;
}

/** A result that nothing is known of, with the reason. */
export interface LeftOut {
  readonly name: string;
  readonly why: string;
}

const countNames = ["truePositive", "falsePositive", "falseNegative", "trueNegative"] as const;
const shareNames = ["sensitivity", "specificity"] as const;

/** Tests that answer in the same way, and may fail together. */
const groups: Readonly<Record<Exclude<StrengthResult["test"], "custom">, string>> = {
  ...{ cold: "sensibility", heat: "sensibility", electric: "sensibility" },
  ...{ percussion: "touch", palpation: "touch", pulseOximetry: "bloodFlow", laserDoppler: "bloodFlow" },
};

/** Every result with its accuracy; those without one apart; and every fault with its path. */
export function weighedResults(results: readonly StrengthResult[]) {
  const faults = results.flatMap(faultsOfResult);
  const weighed = faults.length > 0 ? [] : results.flatMap((result, index) => weighedOf(result, index) ?? []);
  const out = results.flatMap((result, index): LeftOut[] =>
    weighed.some((one) => one.index === index) ? [] : [{ name: `results[${index}]`, why: whyLeftOut(result.test) }],
  );
  return { weighed, out, faults };
}

function weighedOf(result: StrengthResult, index: number): Weighed | undefined {
  const { test, name, source } = result;
  const group = result.group ?? (test === "custom" ? `custom ${name ?? index + 1}` : groups[test]);
  const given = accuracyGiven(result);
  if (given !== undefined) return { index, result, accuracy: given, from: "input", group };
  const found = source === undefined ? usualAccuracy(test) : accuraciesOf(test, source)[0];
  if (found === undefined) return undefined;
  const { mark, method, condition } = found;
  return { index, result, accuracy: found, from: found.source, mark, method, condition, group };
}

function accuracyGiven(result: StrengthResult): Accuracy | undefined {
  const counts = countsGiven(result);
  if (counts !== undefined)
    return {
      sensitivity: counts.truePositive / (counts.truePositive + counts.falseNegative),
      specificity: counts.trueNegative / (counts.trueNegative + counts.falsePositive),
      ...{ counts, countsAre: "given" },
    };
  const { sensitivity, specificity } = result;
  if (sensitivity === undefined || specificity === undefined) return undefined;
  return { sensitivity, specificity, counts: undefined, countsAre: undefined };
}

function countsGiven({ truePositive, falsePositive, falseNegative, trueNegative }: StrengthResult): Counts | undefined {
  if (truePositive === undefined || falsePositive === undefined) return undefined;
  if (falseNegative === undefined || trueNegative === undefined) return undefined;
  return { truePositive, falsePositive, falseNegative, trueNegative };
}

const whyLeftOut = (test: string): string => {
  const kept = accuraciesOf(test).map(({ source, condition }) => `${source} (against ${condition})`);
  return (
    `no published accuracy of ${test} against a non-vital pulp is kept: it is not reckoned in; give sensitivity and ` +
    `specificity, or name a source: ${[...new Set(kept)].join(", ")}`
  );
};

function faultsOfResult(result: StrengthResult, index: number): Fault[] {
  const at = (field: string, says: string): Fault => ({ path: `results[${index}].${field}`, says });
  const counts = countNames.filter((name) => result[name] !== undefined);
  const shares = shareNames.filter((name) => result[name] !== undefined);
  const halfGiven = (given: readonly string[], all: readonly string[]) =>
    given.length === 0
      ? []
      : all.filter((name) => !given.includes(name)).map((name) => at(name, `nothing stands beside ${given[0]}`));
  return [
    ...halfGiven(counts, countNames),
    ...halfGiven(shares, shareNames),
    ...(counts.length > 0 && shares.length > 0
      ? [at("sensitivity", "stands beside counts; give the one or the other")]
      : []),
    ...faultsOfCounts(result, at),
    ...faultsOfShares(result, at),
    ...faultsOfSource(result, counts.length + shares.length > 0, at),
  ];
}

type At = (field: string, says: string) => Fault;

function faultsOfCounts(result: StrengthResult, at: At): Fault[] {
  const counts = countsGiven(result);
  if (counts === undefined) return [];
  const none = (state: string) => `no tooth with a ${state} pulp is counted: at least one is needed`;
  return [
    ...(counts.truePositive + counts.falseNegative === 0 ? [at("truePositive", none("non-vital"))] : []),
    ...(counts.falsePositive + counts.trueNegative === 0 ? [at("trueNegative", none("vital"))] : []),
  ];
}

/** A result that the given shares say can't come about, of whichever pulp. */
function faultsOfShares({ result, sensitivity, specificity }: StrengthResult, at: At): Fault[] {
  if (sensitivity === undefined || specificity === undefined) return [];
  const never = result === "positive" ? sensitivity === 0 && specificity === 1 : sensitivity === 1 && specificity === 0;
  return never
    ? [
        at(
          "result",
          `${result} can't come about with a sensitivity of ${sensitivity} and a specificity of ${specificity}`,
        ),
      ]
    : [];
}

function faultsOfSource({ test, source }: StrengthResult, hasOwn: boolean, at: At): Fault[] {
  if (source !== undefined && hasOwn) return [at("source", "stands beside own values; give the one or the other")];
  if (test === "custom" && !hasOwn)
    return [at("sensitivity", "a custom test needs sensitivity and specificity, or four counts")];
  if (source === undefined || accuraciesOf(test, source).length > 0) return [];
  const kept = [...new Set(accuraciesOf(test).map((one) => one.source))].join(", ");
  return [at("source", `${source} keeps no accuracy of ${test}; kept are ${kept || "none"}`)];
}
