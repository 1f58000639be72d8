import type { LimitReached } from "../words/cabinet-words.ts";
import type { CabinetItemOf } from "./cabinet-item.ts";

type Limits = NonNullable<CabinetItemOf<"instrument">["body"]["limits"]>;
/** What was counted against a file, as far as a limit of whole counts asks for it. */
type Counted = Readonly<Record<"uses" | "canals" | "sterilisations", number>>;

/**
 * The limits that a file stands at exactly: one more and it is past them. Those that it has passed are told elsewhere.
 * Takes the person's limits of its instrument and its counts; a limit that is absent is none.
 */
export const limitsMet = (limits: Limits | undefined, counted: Counted): readonly LimitReached[] =>
  (["uses", "canals", "sterilisations"] as const).flatMap((name) => {
    const limit = limits?.[name];
    return limit !== undefined && counted[name] === limit ? [{ name, limit, found: counted[name] }] : [];
  });
