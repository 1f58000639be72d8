import type { z } from "zod";
import type { BindingContext } from "./binding.ts";

/** An earlier output as a form reads it, and its place in the ledger as an input path names it. */
export interface EarlierRead<Read> {
  readonly read: Read;
  readonly record: (field: string) => string;
}

/** The earlier outputs about some subjects, in their order; one that was refused, never asked or reads otherwise is left out. */
export const earlierRead = <Read>(
  { earlier }: Pick<BindingContext, "earlier">,
  form: z.ZodType<Read>,
  subjects: readonly string[],
): EarlierRead<Read>[] =>
  subjects.flatMap((subject) => {
    const found = earlier(subject);
    const read = form.safeParse(found?.output);
    if (found === undefined || !read.success) return [];
    return [{ read: read.data, record: (field: string): string => `ledger/${found.entryId}/${field}` }];
  });
