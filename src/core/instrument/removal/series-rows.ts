import { z } from "zod";
import cuje from "../../../../data/cuje-2010/source.json" with { type: "json" };
import dioguardi from "../../../../data/dioguardi-2024/source.json" with { type: "json" };
import hulsmann from "../../../../data/hulsmann-schinkel-1999/source.json" with { type: "json" };
import nevares from "../../../../data/nevares-2012/source.json" with { type: "json" };
import shen from "../../../../data/shen-2004/source.json" with { type: "json" };
import suter from "../../../../data/suter-2005/source.json" with { type: "json" };
import tzanetakis from "../../../../data/tzanetakis-2008/source.json" with { type: "json" };
import { chanceSchema } from "../removal-output.ts";

const row = z.strictObject({
  ...{ by: chanceSchema.shape.by, group: z.string(), success: chanceSchema.shape.success },
  ...{ events: z.int().optional(), n: z.int().optional(), share: z.number().optional(), note: z.string().optional() },
  implied: z.literal(true).optional().describe("The counts are the ones that give the printed share."),
  apart: z.literal(true).optional().describe("Holds series that stand on their own: shown, not counted once more."),
  when: z.record(z.string(), z.array(z.string())).describe("Facts of a case that belong to the group; all of them."),
});
/** A group of a published series with what came of its attempts. */
export type SeriesRow = z.infer<typeof row>;

const series = z.looseObject({ id: z.string(), verification: z.enum(["seen", "memory"]), removal: z.array(row) });

const byThird = Object.entries(tzanetakis.byThird).map(([third, counts]) => ({
  ...{ by: "third", group: `${third} third`, success: "removedOrBypassed", implied: true },
  ...{ ...counts, when: { third: [third] } },
}));

/** The files of the series, as sources. */
export const seriesFiles = [hulsmann, suter, cuje, nevares, shen, tzanetakis, dioguardi];

/**
 * Every published series of removals, each with its groups.
 * @source the folders of data/ that it names; docs/methods/removal.md C7
 */
export const removalSeries = z
  .array(series)
  .parse([hulsmann, suter, cuje, nevares, shen, { ...tzanetakis, removal: byThird }, dioguardi]);
