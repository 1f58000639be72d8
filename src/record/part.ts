import { z } from "zod";

/** One kind of part: its name, the version of its form, the form itself, and how older forms become newer ones. */
export interface PartType<Kind extends string = string, Body extends z.ZodType = z.ZodType> {
  readonly kind: Kind;
  /** The version of the form that is written now; 1 for the first. */
  readonly version: number;
  readonly body: Body;
  /** migrations[0] turns a body of version 1 into version 2, and so on; there are version - 1 of them. */
  readonly migrations: readonly ((body: unknown) => unknown)[];
  /** At most one part of this kind stands in a case. */
  readonly single: boolean;
}

/** A kind of part, with the types of its fields kept. */
export const definePart = <Kind extends string, Body extends z.ZodType>(
  type: PartType<Kind, Body>,
): PartType<Kind, Body> => type;

/** The id of a part: lower-case letters, digits and dashes, unique in its case. */
export const partIdSchema = z.string().regex(/^[a-z0-9-]{3,64}$/, "is not the id of a part");
