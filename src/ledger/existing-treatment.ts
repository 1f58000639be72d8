import { type CanalStanding, canalStatesOn } from "../record/canal-states.ts";
import type { InputPath } from "../record/ledger-entry.ts";
import { type BodyOf, type Part, type PartOf, partsOf, thePart } from "../record/parts.ts";

type Existing = NonNullable<BodyOf<"findings">["existing"]>;

/** What was done in the canals before an examination, and where the record says so. */
interface ExistingTreatment {
  readonly canals: Existing;
  readonly paths: readonly InputPath[];
}

/**
 * The existing treatment as an examination met it: as it says itself (an empty list says nothing), else as the anatomy and the visits before its day
 * leave it; undefined where none of them says anything.
 */
export function existingTreatment(parts: readonly Part[], findings: PartOf<"findings">): ExistingTreatment | undefined {
  const own = findings.body.existing;
  if (own !== undefined && own.length > 0)
    return { canals: own, paths: [{ input: "existing", record: `${findings.id}/existing` }] };
  const anatomy = thePart(parts, "anatomy");
  const before = partsOf(parts, "visit").filter(
    ({ body }) => body.on < findings.body.takenOn && body.canals.length > 0,
  );
  if (anatomy?.body.filledBefore === undefined && before.length === 0) return undefined;
  const states = canalStatesOn([...(anatomy === undefined ? [] : [anatomy]), ...before]);
  const canals = Object.entries(states).map(([canal, standing]) => ({ canal, is: asExisting[standing.state] }));
  const sources = before.map(({ id }) => `${id}/canals`);
  const records = anatomy?.body.filledBefore === undefined ? sources : [`${anatomy.id}/filledBefore`, ...sources];
  return { canals, paths: records.map((record) => ({ input: "existing", record })) };
}

/** A canal that a visit reached was opened; one that blocks was opened too. */
const asExisting: Readonly<Record<CanalStanding["state"], Existing[number]["is"]>> = {
  notFound: "untouched",
  located: "opened",
  negotiated: "opened",
  shaped: "opened",
  blocked: "opened",
  medicated: "medicated",
  filled: "filled",
};
