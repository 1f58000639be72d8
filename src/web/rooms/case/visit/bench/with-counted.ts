import type { Visit } from "../materials/use-visit.ts";

/** A count as it is typed. */
interface Counted {
  readonly set: string;
  readonly steriliserCycle: string;
  readonly countedOut: string;
  readonly countedIn: string;
}

/** What is wrong with a count; nothing where it is empty or whole. */
export const countFault = (text: string): string | undefined =>
  text.trim() === "" || /^\d{1,4}$/.test(text.trim()) ? undefined : "write a whole number, as 14";

/** The visit with its set counted, in words, and whether the counts differ. */
export function withCounted(visit: Visit, { set, steriliserCycle, countedOut, countedIn }: Counted) {
  const [out, back] = [countOf(countedOut), countOf(countedIn)];
  const instrumentSet = {
    ...{ set: set.trim(), steriliserCycle: steriliserCycle.trim() },
    ...(out === undefined ? {} : { countedOut: out }),
    ...(back === undefined ? {} : { countedIn: back }),
  };
  const differs = out !== undefined && back !== undefined && out !== back;
  return {
    next: { ...visit, instrumentSet },
    says: `${out ?? "not counted"} out, ${back ?? "not counted"} in`,
    differs: differs ? `${out} out, ${back} in: look for what is missing before the patient leaves.` : undefined,
  };
}

const countOf = (text: string): number | undefined => (/^\d{1,4}$/.test(text.trim()) ? Number(text) : undefined);
