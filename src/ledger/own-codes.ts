import { codesHangOn, codesOf } from "../core/diagnosis/terms/codes-of.ts";
import { diagnosisInput } from "../core/diagnosis/terms/diagnosis-input.ts";
import { europeanTerms } from "../core/diagnosis/terms/european-terms.ts";
import { type Facts, factsOf, withPulp } from "../core/diagnosis/terms/facts-of.ts";
import { examinedOf } from "../core/diagnosis/terms/input-faults.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { BodyOf } from "../record/parts.ts";
import { apicalWords, pulpalWords } from "../record/words/case-words.ts";
import { type DiagnosisTold, diagnosisTold, termsTold } from "./diagnosis-told.ts";

type Own = Pick<BodyOf<"diagnosis">, "pulpal" | "apical">;
type Entry = Pick<LedgerEntry, "input" | "output">;

/** The codes and the European names of two terms, as the table of codes gives them. */
export interface CodesTold extends Pick<DiagnosisTold, "codes" | "european" | "notComputed" | "cautions"> {
  readonly pulpal: { readonly term: string };
  readonly apical: { readonly term: string };
}

/** What of the findings can give a term another code, in words. */
const hangWords: Readonly<Record<string, string>> = {
  tract: "a sinus tract",
  extraoral: "where a swelling lies",
  intraoral: "where a swelling lies",
};

/** The codes of a person's own terms, from the table that gives those of the findings, with the findings that it looks at. */
export function ownCodes({ pulpal, apical }: Own, entry?: Entry): CodesTold {
  const terms = { pulpal: inCapital(pulpalWords[pulpal]), apical: inCapital(apicalWords[apical]) };
  const facts = withPulp(factsBehind(entry), { term: terms.pulpal, status: "determined" });
  const european = europeanTerms(terms, facts);
  const hang = [...new Set(codesHangOn(terms.apical, facts).map((name) => hangWords[name] ?? name))];
  const caution = `${terms.apical} may have another code: it hangs on ${hang.join(" and ")}, which the findings do not tell`;
  return {
    pulpal: { term: terms.pulpal },
    apical: { term: terms.apical },
    codes: codesOf(terms, facts),
    european: european.terms,
    notComputed: european.notComputed,
    cautions: hang.length === 0 ? [] : [caution],
  };
}

/** Whose codes are shown: the person's own, and those of the findings where their terms are others. */
export interface CodesShown {
  readonly own?: CodesTold;
  readonly told?: DiagnosisTold;
}

/** See {@link CodesShown}. Terms that are left open on both axes have no codes to show. */
export function codesShown(own: Own, entry?: Entry): CodesShown {
  const told = diagnosisTold(entry);
  if (isOpen(own)) return told === undefined || isOpen(termsTold(told)) ? {} : { told };
  const codes = ownCodes(own, entry);
  if (told === undefined) return { own: codes };
  const terms = termsTold(told);
  const areTheSame = terms.pulpal === own.pulpal && terms.apical === own.apical;
  return areTheSame || isOpen(terms) ? { own: codes } : { own: codes, told };
}

const isOpen = ({ pulpal, apical }: Own): boolean => pulpal === "notDetermined" && apical === "notDetermined";

/** The findings of an entry as the table of codes looks at them; nothing is known where it refused or there is none. */
function factsBehind(entry: Entry | undefined): Facts {
  const input = entry?.output === undefined ? undefined : diagnosisInput.safeParse(entry.input).data;
  return input === undefined ? {} : factsOf(examinedOf(input));
}

/** A term as the table writes it. */
const inCapital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
