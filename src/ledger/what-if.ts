import type { Operation } from "../record/change.ts";
import type { BodyOf } from "../record/parts.ts";

/** The topics that can be asked "what if": those whose input comes from the record alone, from no other entry. */
export const whatIfTopics = ["anaesthetic", "solvent", "irrigation", "ultrasonicHeat"] as const;
/** One of {@link whatIfTopics}. */
export type WhatIfTopic = (typeof whatIfTopics)[number];

/** A question "what if": what one sum would say with these operations laid over the case. */
export interface WhatIfAsk {
  readonly topic: WhatIfTopic;
  /** As the ledger would call it, as `solvent of visit-1`. */
  readonly subject: string;
  readonly operations: readonly Operation[];
}

/** The visit as it stands, for questions that lay something over it. */
export interface VisitAsked {
  readonly visitId: string;
  readonly revision: number;
  readonly visit: BodyOf<"visit">;
}

/** What the sum would answer, the lines in which it would refuse, or what is missing for it. */
export interface WhatIfAnswer {
  readonly topic: WhatIfTopic;
  readonly subject: string;
  readonly output?: unknown;
  readonly refusal?: readonly string[];
  readonly gap?: string;
}
