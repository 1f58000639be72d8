import type { FastifySchemaCompiler } from "fastify";
import { z } from "zod";
import { faultsOf } from "../core/faults-of.ts";
import { Refusal } from "../core/refusal.ts";

/** Holds a request to its form; what doesn't fit is refused with every fault and its path, in the words of the record. */
export const checkRequest: FastifySchemaCompiler<z.ZodType> =
  ({ schema }) =>
  (asked: unknown) => {
    const parsed = z.safeParse(schema, asked);
    if (parsed.success) return { value: parsed.data };
    const faults = faultsOf(parsed.error, asked);
    return { error: new Refusal("input.invalid", "Cannot do this: the request has faults", {}, faults) };
  };
