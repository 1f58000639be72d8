import {
  type AnaestheticInput,
  type HistoryName,
  historyNames,
} from "../../core/safety/anaesthetic/anaesthetic-input.ts";
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
const ofTheDay: readonly Flag[] = ["cocaineWithinADay", "pregnancy", "bloodPressureUncontrolled"];

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

/** Which flag answers which question of the sum; the age is written elsewhere. */
export const flagOfQuestion: Readonly<Record<HistoryName | "cardiacRisk", Flag>> = {
  unselectiveBetaBlocker: "unselectiveBetaBlocker",
  tricyclic: "tricyclic",
  cocaineWithinADay: "cocaineWithinADay",
  uncontrolledBloodPressure: "bloodPressureUncontrolled",
  uncontrolledThyroid: "thyroidUncontrolled",
  sulphiteAllergy: "allergySulphite",
  anaestheticAllergy: "allergyAnaesthetic",
  methaemoglobinRisk: "methaemoglobinRisk",
  pregnancy: "pregnancy",
  liverFailure: "liverFailure",
  cardiacRisk: "cardiacRisk",
};

/** What the histories answer a question of the sum. Where there is no high blood pressure it is not out of control; that there is does not say that it is. */
function answerTo(name: HistoryName, visit: PartOf<"visit">, parts: readonly Part[]): FlagAnswer | undefined {
  const answer = flagAt(flagOfQuestion[name], visit, parts);
  if (answer !== undefined || name !== "uncontrolledBloodPressure") return answer;
  const high = flagAt("highBloodPressure", visit, parts);
  return high?.is === false ? high : undefined;
}

/** A history that answers given on another day go into: what stood is taken over, but not what hangs on its day, nor what was weighed. */
export function historyTakenOver(history: History["body"], on: string): History["body"] {
  if (history.takenOn === on) return history;
  const { bodyMassKg: _weighedThen, denied = [], note, ...stood } = history;
  const from = `Taken over from the history of ${history.takenOn}, with what was asked at the visit.`;
  return {
    ...{ ...stood, takenOn: on, denied: denied.filter((one) => !ofTheDay.includes(one)) },
    note: note === "" ? from : `${note}\n${from}`,
  };
}

/** The questions of the sum that the histories answer, and whether there is cardiac risk. */
export function historyAnswers(visit: PartOf<"visit">, parts: readonly Part[]): FactTold<keyof AnaestheticInput>[] {
  const found = historyNames.flatMap((name) => {
    const answer = answerTo(name, visit, parts);
    return answer === undefined ? [] : [{ name, ...answer }];
  });
  const paths = found.map(({ name, record }): InputPath => ({ input: `history.${name}`, record }));
  const value = Object.fromEntries(found.map(({ name, is }) => [name, is ? "yes" : "no"]));
  const cardiac = flagAt("cardiacRisk", visit, parts);
  return [
    ...(cardiac === undefined ? [] : factTold("cardiacRisk" as const, cardiac.is, cardiac.record)),
    ...(found.length === 0 ? [] : [{ field: "history" as const, value, paths }]),
  ];
}
