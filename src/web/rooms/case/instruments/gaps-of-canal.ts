import { bendTold } from "../../../../ledger/bend-told.ts";
import type { InstrumentsOfCanal, InstrumentUsed } from "../../../../ledger/instruments-of-canals.ts";
import { refusalInWords } from "../../../words/value-words.ts";

/** What is not told of instruments, and why. */
export interface Gap {
  readonly of: "How hard it was bent" | "What it used of its life";
  readonly why: string;
}
/** A gap with the instruments of a canal that have it. */
export interface GapOfSeveral extends Gap {
  readonly names: readonly string[];
}

/** What is not told of one instrument, each with its reason; the ledger is asked of one whose row names a depth. */
export const gapsOf = ({ bend, life, uses }: InstrumentUsed): Gap[] => [
  ...(bend === undefined ? [{ of: "How hard it was bent", why: unasked(uses) } as const] : []),
  ...(bendTold(bend) === undefined ? (bend?.refused ?? []) : []).map(
    (why): Gap => ({ of: "How hard it was bent", why: refusalInWords(why) }),
  ),
  ...(life?.refused ?? []).map((why): Gap => ({ of: "What it used of its life", why: refusalInWords(why) })),
];

const unasked = (uses: InstrumentUsed["uses"]): string =>
  uses.every(({ depthMm }) => depthMm === undefined)
    ? "say in the visit how deep its tip went"
    : "the ledger has not reached it yet";

/** Gaps that several instruments of a canal have for the same reason, each once with those that have it. */
export function gapsOfSeveral({ visits }: InstrumentsOfCanal): GapOfSeveral[] {
  const all = visits.flatMap(({ instruments }) =>
    instruments.flatMap((used) => gapsOf(used).map((gap) => ({ ...gap, name: used.name }))),
  );
  const isLike = (one: Gap, other: Gap): boolean => one.of === other.of && one.why === other.why;
  return all
    .filter((gap, index) => all.findIndex((one) => isLike(one, gap)) === index)
    .map(({ of, why }) => ({ of, why, names: all.filter((one) => isLike(one, { of, why })).map(({ name }) => name) }))
    .filter(({ names }) => names.length > 1);
}
