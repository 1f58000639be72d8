import { useState } from "react";
import { type Difference, differencesFrom, type TermsTold, termsTold } from "../../../../ledger/diagnosis-told.ts";
import { sheetsUpTo } from "../../../../record/earlier-sheets.ts";
import type { BodyOf, PartOf } from "../../../../record/parts.ts";
import { apicalWords, pulpalWords } from "../../../../record/words/case-words.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { useCaseNow } from "../case-now.ts";
import { type FindingsTold, hasTerm, useTold } from "./use-told.ts";

type Body = BodyOf<"diagnosis">;

/** A person's diagnosis with the findings that stand beside it. */
export interface OwnDiagnosis extends FindingsTold {
  readonly body: Body;
  readonly readOnly: boolean;
  /** The findings of that day and before, the latest first. */
  readonly sheets: readonly PartOf<"findings">[];
  readonly sheet: PartOf<"findings"> | undefined;
  readonly showSheet: (id: string) => void;
  readonly differences: readonly Difference[];
  /** Whether the person's terms are those of the findings, word for word. */
  readonly isTaken: boolean;
  /** Records the terms of the findings as the person's own; absent where there are none. */
  readonly take: (() => void) | undefined;
}

/** See {@link OwnDiagnosis}. */
export function useOwnDiagnosis(): OwnDiagnosis {
  const { parts, ledger } = useCaseNow();
  const whole = useField("", "Terms of the findings");
  const body = whole.value as Body;
  const sheets = sheetsUpTo(parts, body.madeOn);
  const [chosen, showSheet] = useState<string>();
  const besides = ledger.find(({ id }) => id === body.suggestion)?.subject;
  const sheet =
    sheets.find(({ id }) => id === chosen) ?? sheets.find(({ id }) => `diagnosis of ${id}` === besides) ?? sheets[0];
  const { entry, told } = useTold(sheet?.id);
  const terms = told && hasTerm(told) ? termsTold(told) : undefined;
  const take = (given: TermsTold, suggestion: string) => {
    const { apicalAlso: _also, source: _source, ...kept } = body;
    whole.write({ ...kept, ...given, suggestion }, `taken: ${inWords(given)}`, "now");
  };
  return {
    ...{ body, readOnly: whole.readOnly, sheets, sheet, showSheet, entry, told },
    differences: told === undefined ? [] : differencesFrom(told, body),
    isTaken: terms !== undefined && terms.pulpal === body.pulpal && terms.apical === body.apical,
    take: terms && entry && !whole.readOnly ? () => take(terms, entry.id) : undefined,
  };
}

const inWords = ({ pulpal, apical }: TermsTold): string => `${pulpalWords[pulpal]}, ${apicalWords[apical]}`;
