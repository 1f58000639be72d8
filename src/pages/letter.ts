import type { CaseSource } from "./case-source.ts";
import { canalsInLetter, lotsInLetter } from "./letter/canals-in-letter.ts";
import { type LetterCase, letterCase } from "./letter/letter-case.ts";
import { footOfLetter, outlook } from "./letter/outlook.ts";
import { visitsInSentences } from "./letter/visits-in-sentences.ts";
import { afterwards, forReentry, head, notTold, restoreNow } from "./letter/what-comes-next.ts";
import { mishapsInLetter, whySent } from "./letter/what-was-met.ts";
import type { Block, Page, PageModel } from "./page-model.ts";
import { titleOf } from "./title-of.ts";

/**
 * The letter with which a tooth is handed back to another dentist: what must be restored first, then warnings, what was done,
 * the outlook, and what is not recorded. Names and dates are written on it by hand.
 */
export function letter(source: CaseSource): PageModel {
  const of = letterCase(source);
  const { title, mark, demo } = titleOf(source);
  return {
    ...{ as: "letter", title: `Hand-back, ${title}`, mark, demo },
    pages: [
      ...[head(of), ...restoreNow(of), ...forReentry(of), ...whySent(of), ...whatWasDone(of)],
      ...[...mishapsInLetter(of), ...outlook(of), ...afterwards(of), ...notTold(of), footOfLetter(of)],
    ],
  };
}

function whatWasDone(of: LetterCase): Page[] {
  const lines = visitsInSentences(of);
  const visits: Block[] = lines.length === 0 ? [] : [{ kind: "text", points: true, lines }];
  const blocks = [...visits, ...canalsInLetter(of), ...lotsInLetter(of)];
  return blocks.length === 0 ? [] : [{ title: "What was done", on: "", blocks, notes: [] }];
}
