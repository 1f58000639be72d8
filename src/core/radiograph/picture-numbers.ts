import { z } from "zod";

const isTyped = (value: unknown): value is Float32Array | Float64Array =>
  value instanceof Float32Array || value instanceof Float64Array;

/**
 * A schema for the numbers of a picture, row by row: typed arrays as they are, plain ones checked number by number.
 * Takes what the numbers are, for the published schema, and which are accepted. In JSON it is an array of numbers.
 */
export const pictureNumbers = (says: string, accepted: { readonly least: number; readonly most: number }) =>
  z
    .unknown()
    .meta({ type: "array", items: { type: "number" }, description: says })
    .transform((value, context): Float32Array | Float64Array => {
      const numbers = isTyped(value) ? value : plainNumbers(value);
      if (numbers === undefined) {
        context.issues.push({ code: "custom", input: value, message: "is no array of numbers" });
        return z.NEVER;
      }
      const wrong = numbers.findIndex((one) => !(one >= accepted.least && one <= accepted.most));
      if (wrong < 0) return numbers;
      const message = `is outside what is accepted: ${accepted.least} to ${accepted.most}`;
      context.issues.push({ code: "custom", input: value, path: [wrong], message });
      return z.NEVER;
    });

/**
 * A schema for the numbers of a picture that is given: a typed array goes through as it is, because checking millions of
 * numbers that the sum has just made takes longer than the sum. In JSON it is an array of numbers.
 */
export const givenNumbers = z
  .unknown()
  .meta({ type: "array", items: { type: "number" } })
  .refine(
    (value) => isTyped(value) || plainNumbers(value) !== undefined,
    "is no array of numbers",
  ) as unknown as z.ZodType<Float64Array>;

function plainNumbers(value: unknown): Float64Array | undefined {
  if (!Array.isArray(value) || !value.every((one) => typeof one === "number")) return undefined;
  return Float64Array.from(value);
}
