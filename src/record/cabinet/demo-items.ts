import type { CabinetGesture, CabinetOperation } from "./cabinet-gesture.ts";
import type { CabinetItem, CabinetItemOf } from "./cabinet-item.ts";

/** What a gesture would put that does not stand yet; undefined where all of it stands. */
export function withoutStanding(gesture: CabinetGesture, items: readonly CabinetItem[]): CabinetGesture | undefined {
  const stand = new Set(items.map(({ id }) => id));
  return unlessEmpty({ ...gesture, operations: gesture.operations.filter(({ id }) => !stand.has(id)) });
}

/**
 * The gesture that takes the demo out of a cabinet; undefined where nothing of it is there. A demo instrument that the
 * clinic's own files or sequences name stays, as one of the clinic's own.
 */
export function demoTakenOut(items: readonly CabinetItem[]): CabinetGesture | undefined {
  const named = new Set(items.filter(({ body }) => body.demo !== true).flatMap(instrumentsOf));
  const operations = items
    .filter(({ body }) => body.demo === true)
    .map((item): CabinetOperation => (item.kind === "instrument" && named.has(item.id) ? asOwn(item) : taken(item)));
  return unlessEmpty({ words: "The demo's cabinet taken out", operations });
}

const unlessEmpty = (gesture: CabinetGesture): CabinetGesture | undefined =>
  gesture.operations.length === 0 ? undefined : gesture;

function instrumentsOf(item: CabinetItem): string[] {
  if (item.kind === "file") return [item.body.instrument];
  return item.kind === "sequence" ? item.body.steps.map(({ instrument }) => instrument) : [];
}

function asOwn({ id, kind, revision, body }: CabinetItemOf<"instrument">): CabinetOperation {
  const { demo: _demo, ...own } = body;
  return { op: "put", id, kind, baseRevision: revision, body: own };
}

const taken = ({ id, kind, revision }: CabinetItem): CabinetOperation => ({
  ...{ op: "remove", id, kind, baseRevision: revision },
});
