import type { z } from "zod";
import type { PartId } from "../core/ids.ts";
import { anatomyPart } from "./parts/anatomy.ts";
import { casePart } from "./parts/case.ts";
import { comparisonPart } from "./parts/comparison.ts";
import { consentPart } from "./parts/consent.ts";
import { diagnosisPart } from "./parts/diagnosis.ts";
import { claimPart, referencePart, reviewPart } from "./parts/evidence.ts";
import { filmPart } from "./parts/film.ts";
import { findingsPart } from "./parts/findings.ts";
import { handbackPart } from "./parts/handback.ts";
import { markPart } from "./parts/mark.ts";
import { medicalHistoryPart } from "./parts/medical-history.ts";
import { mishapPart } from "./parts/mishap.ts";
import { pairingPart } from "./parts/pairing.ts";
import { planPart } from "./parts/plan.ts";
import { recallPart } from "./parts/recall.ts";
import { removalPart } from "./parts/removal.ts";
import { searchPart } from "./parts/search.ts";
import { visitPart } from "./parts/visit.ts";

/** Every kind of part that a case can hold; the only register. */
export const partTypes = {
  case: casePart,
  anatomy: anatomyPart,
  medicalHistory: medicalHistoryPart,
  findings: findingsPart,
  diagnosis: diagnosisPart,
  plan: planPart,
  consent: consentPart,
  film: filmPart,
  mark: markPart,
  pairing: pairingPart,
  comparison: comparisonPart,
  search: searchPart,
  visit: visitPart,
  mishap: mishapPart,
  removal: removalPart,
  handback: handbackPart,
  recall: recallPart,
  reference: referencePart,
  claim: claimPart,
  review: reviewPart,
} as const;

/** The name of a kind of part. */
export type PartKind = keyof typeof partTypes;
/** What a part of one kind holds. */
export type BodyOf<Kind extends PartKind> = z.infer<(typeof partTypes)[Kind]["body"]>;

/** A part as it stands in a case now. */
export type PartOf<Kind extends PartKind> = {
  readonly [K in Kind]: {
    readonly id: PartId;
    readonly kind: K;
    /** Counts the changes of this part; conflict is judged by it. */
    readonly revision: number;
    readonly body: BodyOf<K>;
  };
}[Kind];
/** A part of any kind. */
export type Part = PartOf<PartKind>;

/** Whether a text names a kind of part. */
export const isPartKind = (text: string): text is PartKind => Object.hasOwn(partTypes, text);

/** The parts of one kind, in the order given. */
export function partsOf<Kind extends PartKind>(parts: readonly Part[], kind: Kind): PartOf<Kind>[] {
  return parts.filter((part): part is PartOf<Kind> & Part => part.kind === kind);
}

/** The single part of a kind, or undefined. */
export function thePart<Kind extends PartKind>(parts: readonly Part[], kind: Kind): PartOf<Kind> | undefined {
  return partsOf(parts, kind)[0];
}
