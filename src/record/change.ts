import { z } from "zod";
import { type CaseId, type PartId, partId } from "../core/ids.ts";
import { faultAt, Refusal } from "../core/refusal.ts";
import { canonicalJson, hashOf } from "./canonical-json.ts";
import { partIdSchema } from "./part.ts";
import { type Part, partsOf, partTypes } from "./parts.ts";
import { checkBody, kindOf } from "./read-part.ts";

/** What a gesture asks to be done to one part; baseRevision is the revision that the person saw, 0 for a new part. */
const operationSchema = z.discriminatedUnion("op", [
  z.strictObject({
    op: z.literal("put"),
    id: partIdSchema,
    kind: z.string(),
    baseRevision: z.int().min(0),
    body: z.unknown(),
  }),
  z.strictObject({ op: z.literal("remove"), id: partIdSchema, kind: z.string(), baseRevision: z.int().min(1) }),
]);
/** See {@link operationSchema}. */
export type Operation = z.infer<typeof operationSchema>;

/** A finished gesture: its name in words and what it does, as it reaches the record. */
export const gestureSchema = z.strictObject({
  words: z.string().trim().min(1).max(200).describe("What was done, as: MB2 traced."),
  operations: z.array(operationSchema).min(1).max(2_000),
});
/** See {@link gestureSchema}. */
export type Gesture = z.infer<typeof gestureSchema>;

/** One part before and after a change; null where it did not stand. */
export interface PartPatch {
  readonly id: PartId;
  readonly kind: Part["kind"];
  readonly version: number;
  readonly before: Part["body"] | null;
  readonly after: Part["body"] | null;
}

/** One link of a case's chain: who did what when, and the hash that ties it to the link before. */
export interface Change {
  readonly caseId: CaseId;
  /** 1 for the first change of the case. */
  readonly sequence: number;
  readonly at: string;
  readonly who: string;
  readonly words: string;
  readonly patches: readonly PartPatch[];
  /** The change that this one takes back; an undo names a change, a redo names an undo. */
  readonly inverts?: number;
  /** Hash of the link before; 64 zeros for the first. */
  readonly previousHash: string;
  readonly hash: string;
}

/** The hash before the first link. */
export const noHash = "0".repeat(64);

/** What every link of a chain carries, whatever the chain is about. */
export type Link = Pick<Change, "sequence" | "previousHash" | "hash">;

/** A link with its hash over everything else in it. */
export const seal = <Content extends Omit<Link, "hash">>(content: Content): Content & Link => ({
  ...content,
  hash: hashOf(content),
});

/** Whether a link's hash is that of its content and it follows the given one. */
export function follows(change: Link, previousHash: string): boolean {
  const { hash, ...content } = change;
  return change.previousHash === previousHash && hashOf(content) === hash;
}

/** A conflict on one part: what the person wanted and what stands, both whole. */
export interface Conflict<Item = Part> {
  readonly id: string;
  readonly kind: string;
  readonly yours: unknown;
  readonly theirs: Item | null;
}

/**
 * The patches that a gesture makes on the parts of a case.
 * @throws Refusal `input.invalid` for a body that does not fit, `record.conflict` (facts.conflicts: {@link Conflict}[])
 * when a part has changed since the person saw it, `input.impossible` for a second part of a kind that stands once or
 * a second search for one thing, for a part that is touched twice in one gesture, and for taking away what says which tooth of whom it is.
 */
export function patchesOf(gesture: Gesture, parts: readonly Part[]): PartPatch[] {
  checkGesture(gesture);
  const conflicts = gesture.operations.flatMap((operation) => conflictOf(operation, parts));
  if (conflicts.length > 0)
    throw new Refusal(
      "record.conflict",
      `Cannot record "${gesture.words}": it was changed elsewhere in the meantime; both versions are kept, choose one`,
      { conflicts },
    );
  const patches = gesture.operations.map((operation) => patchOf(operation, parts));
  checkSingles(apply(parts, patches));
  return patches.filter((patch) => canonicalJson(patch.before) !== canonicalJson(patch.after));
}

/** One gesture touches a part once (else its inverse would be ambiguous), and a case never loses what it is about. */
function checkGesture(gesture: Gesture): void {
  const seen = new Set<string>();
  gesture.operations.forEach(({ id, op, kind }, index) => {
    const path = `operations[${index}]`;
    if (seen.has(id)) throw faultAt(`${path}.id`, `${id} is touched twice in one gesture; touch each part once`);
    seen.add(id);
    if (op === "remove" && kind === "case")
      throw faultAt(path, "takes away what says which tooth of whom it is; remove the whole case instead");
  });
}

function conflictOf(operation: Operation, parts: readonly Part[]): Conflict[] {
  const stands = parts.find((part) => part.id === operation.id);
  if ((stands?.revision ?? 0) === operation.baseRevision) return [];
  return [
    {
      id: operation.id,
      kind: operation.kind,
      yours: operation.op === "put" ? operation.body : null,
      theirs: stands ?? null,
    },
  ];
}

function patchOf(operation: Operation, parts: readonly Part[]): PartPatch {
  const kind = kindOf(operation.kind);
  const before = parts.find((part) => part.id === operation.id);
  if (before !== undefined && before.kind !== kind)
    throw new Refusal("input.impossible", `Cannot record ${operation.id}: it is a ${before.kind}, not a ${kind}`);
  const after = operation.op === "put" ? checkBody(kind, operation.body) : null;
  return { id: partId(operation.id), kind, version: partTypes[kind].version, before: before?.body ?? null, after };
}

function checkSingles(parts: readonly Part[]): void {
  for (const type of Object.values(partTypes))
    if (type.single && parts.filter((part) => part.kind === type.kind).length > 1)
      throw new Refusal("input.impossible", `Cannot record a second ${type.kind}: a case has one`);
  const sought = partsOf(parts, "search").map(({ body }) => body.feature);
  const twice = sought.find((feature, at) => sought.indexOf(feature) < at);
  if (twice !== undefined)
    throw new Refusal("input.impossible", `Cannot record a second search for ${twice}: add the look to the first`);
}

/** The parts after patches: each touched part gets its next revision, counted on even where a part was removed and comes back. */
export function apply<Item extends Counted>(
  parts: readonly Item[],
  patches: readonly Patched[],
  revisions: ReadonlyMap<string, number> = new Map(),
): Item[] {
  const standing = new Map<string, Item>(parts.map((part) => [part.id, part]));
  for (const { id, kind, after } of patches) {
    const revision = (standing.get(id)?.revision ?? revisions.get(id) ?? 0) + 1;
    if (after === null) standing.delete(id);
    // A patch's body was held to the form of its kind when it was made or read.
    else standing.set(id, { id, kind, revision, body: after } as unknown as Item);
  }
  return [...standing.values()];
}

/** What stands, whose changes are counted. */
interface Counted {
  readonly id: string;
  readonly revision: number;
}

/** What became of one of them; null where it does not stand any more. */
interface Patched {
  readonly id: string;
  readonly kind: string;
  readonly after: object | null;
}

/** The patches that take patches back, last first. */
export const inverseOf = (patches: readonly PartPatch[]): PartPatch[] =>
  patches.map((patch) => ({ ...patch, before: patch.after, after: patch.before })).reverse();

/** The hash of a case's state: what stands, without how often it was changed. */
export function stateHash(parts: readonly Part[]): string {
  const bare = parts.map(({ id, kind, body }) => ({ id, kind, body }));
  return hashOf(bare.sort((a, b) => (a.id < b.id ? -1 : 1)));
}
