import { z } from "zod";
import { type CabinetKind, cabinetId, cabinetKinds } from "./cabinet-item.ts";

const put = <Kind extends CabinetKind>(kind: Kind) =>
  z.strictObject({
    op: z.literal("put"),
    id: cabinetId,
    kind: z.literal(kind),
    baseRevision: z.int().min(0).describe("The revision that the person saw; 0 for a new item."),
    body: cabinetKinds[kind],
  });

const remove = z.strictObject({
  op: z.literal("remove"),
  id: cabinetId,
  kind: z.enum(["instrument", "file", "sequence", "stock", "template"]),
  baseRevision: z.int().min(1),
});

const operation = z.discriminatedUnion("op", [
  z.discriminatedUnion("kind", [put("instrument"), put("file"), put("sequence"), put("stock"), put("template")]),
  remove,
]);
/** What a gesture asks to be done to one item of the cabinet. */
export type CabinetOperation = z.infer<typeof operation>;

/** A finished gesture on the cabinet: its name in words and what it does. */
export const cabinetGestureSchema = z.strictObject({
  words: z.string().trim().min(1).max(200).describe("What was done, as: File 3 sterilised."),
  operations: z.array(operation).min(1).max(2_000),
});
/** See {@link cabinetGestureSchema}. */
export type CabinetGesture = z.infer<typeof cabinetGestureSchema>;
