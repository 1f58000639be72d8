import type { MissedCanalTold } from "../../../../ledger/missed-canal-told.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { featureWords } from "../../../../record/words/search-words.ts";
import { countOf } from "../../../parts/figures-in-words.ts";
import { capital, lowered } from "../../../words/capital.ts";
import { sentenceInWords } from "../../../words/value-words.ts";

/** What is searched for as a heading: `Second mesiobuccal canal`. */
export const nameOfFeature = (feature: BodyOf<"search">["feature"]): string => capital(featureWords[feature]);

/** After how many looks the chance stands: `after 3 looks`, `before any look`; those without accuracy are told apart. */
export function afterLooks({ steps }: Pick<MissedCanalTold, "steps">, looks: number): string {
  const left = looks - steps.length;
  const counted = steps.length === 0 ? "before any look that counts" : `after ${countOf(steps.length, "look")}`;
  if (looks === 0) return "before any look";
  return left === 0 ? counted : `${counted}; ${countOf(left, "look")} not reckoned in yet`;
}

/** What an entry says of a look, by the look's place in the table: `Look 2: no sensitivity ..`. */
export function lookSentence(says: string): string {
  const [, number] = /evidence\[(\d+)\]/.exec(says) ?? [];
  const plain = sentenceInWords(says.replace(/^evidence\[\d+\](\.\w+)?: /, "").replaceAll(/evidence\[\d+\]\./g, ""));
  return number === undefined ? plain : `Look ${Number(number) + 1}: ${lowered(plain)}`;
}
