import type { AnaestheticInput, HistoryName } from "../../core/safety/anaesthetic/anaesthetic-input.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import type { medicalFlags } from "../../record/parts/medical-history.ts";
import type { Part, PartOf } from "../../record/parts.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { latestOf } from "../latest-of.ts";
import { historiesAt } from "./person-at-visit.ts";

type Flag = (typeof medicalFlags)[number];
type History = PartOf<"medicalHistory">;

/** What a history answers about one flag, and where. */
interface FlagAnswer {
  readonly is: boolean;
  readonly record: string;
}

/** What was asked that day may be otherwise on another: a no counts where it was said, or the history confirmed, at the visit. */
const ofTheDay: readonly Flag[] = ["cocaineWithinADay", "pregnancy"];

/**
 * What the histories up to a visit answer about a flag: the last one that says anything of it. Nothing to note is a no to all but what
 * hangs on the day. Undefined where nobody has asked.
 */
export function flagAt(flag: Flag, visit: PartOf<"visit">, parts: readonly Part[]): FlagAnswer | undefined {
  const last = latestOf(historiesAt(visit, parts).filter((history) => answerIn(history, flag) !== undefined));
  const answer = last === undefined ? undefined : answerIn(last, flag);
  if (last === undefined || answer === undefined) return undefined;
  const isOfVisit = visit.body.historyConfirmed || last.body.takenOn === visit.body.on;
  return answer.is || isOfVisit || !ofTheDay.includes(flag) ? answer : undefined;
}

function answerIn({ id, body: { flags, denied = [], nothingToNote } }: History, flag: Flag): FlagAnswer | undefined {
  const index = flags.findIndex((one) => one.flag === flag);
  if (index >= 0) return { is: true, record: `${id}/flags/${index}` };
  const no = denied.indexOf(flag);
  if (no >= 0) return { is: false, record: `${id}/denied/${no}` };
  return nothingToNote && !ofTheDay.includes(flag) ? { is: false, record: `${id}/nothingToNote` } : undefined;
}

/** Which flag answers which question of the sum. */
const flagOf: Readonly<Record<HistoryName, Flag>> = {
  unselectiveBetaBlocker: "unselectiveBetaBlocker",
  tricyclic: "tricyclic",
  cocaineWithinADay: "cocaineWithinADay",
  uncontrolledBloodPressure: "highBloodPressure",
  uncontrolledThyroid: "thyroidUncontrolled",
  sulphiteAllergy: "allergySulphite",
  anaestheticAllergy: "allergyAnaesthetic",
  methaemoglobinRisk: "methaemoglobinRisk",
  pregnancy: "pregnancy",
  liverFailure: "liverFailure",
};

/** The questions of the sum that the histories answer, and whether there is cardiac risk. */
export function historyAnswers(visit: PartOf<"visit">, parts: readonly Part[]): FactTold<keyof AnaestheticInput>[] {
  const found = Object.entries(flagOf).flatMap(([name, flag]) => {
    const answer = flagAt(flag, visit, parts);
    // High blood pressure may well be under control: that it is there does not answer whether it is.
    return answer === undefined || (flag === "highBloodPressure" && answer.is) ? [] : [{ name, ...answer }];
  });
  const paths = found.map(({ name, record }): InputPath => ({ input: `history.${name}`, record }));
  const value = Object.fromEntries(found.map(({ name, is }) => [name, is ? "yes" : "no"]));
  const cardiac = flagAt("cardiacRisk", visit, parts);
  return [
    ...(cardiac === undefined ? [] : factTold("cardiacRisk" as const, cardiac.is, cardiac.record)),
    ...(found.length === 0 ? [] : [{ field: "history" as const, value, paths }]),
  ];
}
