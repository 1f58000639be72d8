import type { z } from "zod";
import { faultsOf } from "../core/faults-of.ts";
import { Refusal } from "../core/refusal.ts";
import { isPartKind, type Part, type PartKind, partTypes } from "./parts.ts";

/** A part as it was stored: its kind, the version of the form it was written in, and a body that nobody has checked. */
export interface StoredPart {
  readonly id: string;
  readonly kind: string;
  readonly version: number;
  readonly revision: number;
  readonly body: unknown;
}

/**
 * A stored part in today's form: migrated if it is older, and validated.
 * @throws Refusal `record.newerVersion` when a newer program wrote it, `input.invalid` with every fault otherwise.
 */
export function readPart(stored: StoredPart): Part {
  const kind = kindOf(stored.kind);
  const type = partTypes[kind];
  if (stored.version > type.version)
    throw new Refusal(
      "record.newerVersion",
      `Cannot read part ${stored.id}: its form ${kind} is version ${stored.version}, this program knows ${type.version}; use the newer program`,
      { kind, version: stored.version },
    );
  const migrations: readonly ((body: unknown) => unknown)[] = type.migrations;
  const body = migrations.slice(stored.version - 1).reduce<unknown>((older, migrate) => migrate(older), stored.body);
  return { id: stored.id, kind, revision: stored.revision, body: checkBody(kind, body) } as Part;
}

/**
 * A body that fits the form of its kind.
 * @throws Refusal `input.invalid` with one fault for each thing that is wrong.
 */
export function checkBody(kind: PartKind, body: unknown): Part["body"] {
  const schema: z.ZodType = partTypes[kind].body;
  const parsed = schema.safeParse(body);
  if (parsed.success) return parsed.data as Part["body"];
  throw new Refusal("input.invalid", `Cannot record ${kind}: it has faults`, { kind }, faultsOf(parsed.error, body));
}

/**
 * A text as the name of a kind of part.
 * @throws Refusal `input.invalid` when there is no such kind.
 */
export function kindOf(text: string): PartKind {
  if (isPartKind(text)) return text;
  const says = `"${text}" is none of ${Object.keys(partTypes).join(", ")}`;
  throw new Refusal("input.invalid", `Cannot record a part: kind ${says}`, {}, [{ path: "kind", says }]);
}
