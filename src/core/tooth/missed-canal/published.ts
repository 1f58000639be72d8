import { z } from "zod";
import { sourcesOf } from "../../basis.ts";
import { features } from "./feature.ts";
import { lookKinds } from "./look.ts";
import { publishedSources } from "./published-sources.ts";

const teeth = z.array(z.string());
const share = z.number().min(0).max(1);
const feature = z.enum(features);

const series = z.strictObject({
  feature,
  teeth,
  region: z.string(),
  n: z.number().int().min(0),
  N: z.number().int().min(1),
  /** "fromPercent": the paper prints a percentage, and the count was worked back from it. */
  counted: z.enum(["printed", "fromPercent"]),
  regions: z.number().int().optional(),
  lowest: share.optional(),
  highest: share.optional(),
  /** Its teeth are counted in another series too: used only where its region is asked for. */
  within: z.boolean().optional(),
  onFilms: z.boolean().optional(),
});
const accuracy = z.strictObject({
  kind: z.enum(lookKinds),
  features: z.array(feature),
  teeth: teeth.optional(),
  sensitivity: share,
  specificity: share,
  says: z.string(),
});
const beside = z.strictObject({ feature, kind: z.enum(lookKinds).optional(), teeth, says: z.string() });

const folder = z.looseObject({
  id: z.string(),
  reference: z.string(),
  verification: z.enum(["seen", "memory"]),
  series: z.array(series).default([]),
  accuracy: z.array(accuracy).default([]),
  beside: z.array(beside).default([]),
});
const folders = publishedSources.map((source) => folder.parse(source));

/** A published count of teeth with a feature, with the id of its source. */
export type PublishedSeries = z.infer<typeof series> & { readonly source: string };

/** Every source of this topic. */
export const missedCanalSources = sourcesOf(folders);

/** Every published count. */
export const publishedSeries: readonly PublishedSeries[] = folders.flatMap(({ id, series: held }) =>
  held.map((one) => ({ ...one, source: id })),
);

/** How well a kind of look finds a feature, as published, with the id of its source. */
export const publishedAccuracy = folders.flatMap(({ id, accuracy: held }) =>
  held.map((one) => ({ ...one, source: id })),
);

/** What is said beside a prior or a look: other published figures that do not enter the sum. */
export const publishedBeside = folders.flatMap(({ id, beside: held }) => held.map((one) => ({ ...one, source: id })));
