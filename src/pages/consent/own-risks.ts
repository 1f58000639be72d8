import type { ConsentCase } from "./consent-case.ts";
import { waysToTell } from "./consent-case.ts";
import { notPlain } from "./plain-reason.ts";

/** The risks named to the patient beyond those that the told ways print, by what the page does with them. */
export interface OwnRisks {
  /** Plain sentences to print, those of a way that is not told among them. */
  readonly printed: readonly string[];
  /** About what a printed risk says already. */
  readonly saidAlready: readonly string[];
  /** Not in words for a patient: the page leaves a line for each. */
  readonly byHand: readonly string[];
}

/** See {@link OwnRisks}. */
export function ownRisks(of: Pick<ConsentCase, "ways" | "plan">): OwnRisks {
  const all = of.ways.options.flatMap(({ risks }) => risks);
  const told = waysToTell(of).flatMap(({ risks }) => risks);
  const standing = new Set(told.flatMap(({ says, plain }) => [says, plain]));
  const named = [...new Set(of.plan.risksNamed.map((risk) => risk.trim()))].filter((risk) => risk !== "");
  // A risk of a way that is not told was named all the same: it is printed in its plain words.
  const fresh = named.filter((risk) => !standing.has(risk));
  const called = fresh.map((risk) => ({ risk, plain: all.find(({ says }) => says === risk)?.plain }));
  const free = called.flatMap(({ risk, plain }) => (plain === undefined ? [risk] : []));
  const isSaid = (risk: string) => told.some(({ says, plain }) => isOfSameSubject(risk, `${says} ${plain}`));
  const left = free.filter((risk) => !isSaid(risk));
  return {
    printed: [
      ...new Set(called.flatMap(({ plain }) => (plain === undefined || standing.has(plain) ? [] : [plain]))),
      ...left.filter((risk) => notPlain(risk) === undefined),
    ],
    saidAlready: free.filter(isSaid),
    byHand: left.filter((risk) => notPlain(risk) !== undefined),
  };
}

/** Two words at least, and half of those that carry a risk's meaning, stand in the other as well. */
function isOfSameSubject(risk: string, other: string): boolean {
  const own = subjectWords(risk);
  const others = subjectWords(other);
  const shared = [...own].filter((word) => others.has(word)).length;
  return shared >= 2 && shared * 2 >= own.size;
}

/** Words of three letters or more, by their first five letters, without those that any risk may hold. */
const subjectWords = (text: string): ReadonlySet<string> =>
  new Set(
    (text.toLowerCase().match(/\p{L}{3,}/gu) ?? []).filter((word) => !common.has(word)).map((word) => word.slice(0, 5)),
  );

const common: ReadonlySet<string> = new Set([
  ...["all", "and", "any", "are", "can", "for", "get", "had", "has", "its", "may", "not", "now", "off", "one", "out"],
  ...["the", "too", "was", "way", "you"],
  ...["tooth", "teeth", "root", "roots", "canal", "canals", "treatment", "visit", "visits", "patient", "risk"],
  ...["above", "after", "again", "also", "before", "could", "does", "from", "have", "into", "later", "made", "make"],
  ...["more", "most", "much", "need", "needs", "never", "only", "over", "some", "that", "their", "them", "then"],
  ...["there", "these", "they", "this", "turn", "very", "well", "what", "when", "which", "will", "with", "without"],
  ...["would", "your", "cases", "rare", "time", "stay", "stays", "come", "comes", "take", "taken", "once"],
]);
