import { z } from "zod";
import weel from "../../../../data/aiha-weel-1993/source.json" with { type: "json" };
import eu2000 from "../../../../data/directive-2000-39-ec/source.json" with { type: "json" };
import eu2017 from "../../../../data/directive-2017-164-eu/source.json" with { type: "json" };
import eh40 from "../../../../data/eh40-2005/source.json" with { type: "json" };
import hazMap from "../../../../data/haz-map/source.json" with { type: "json" };
import quebec from "../../../../data/irsst-quebec/source.json" with { type: "json" };
import idlh from "../../../../data/niosh-idlh-1994/source.json" with { type: "json" };
import niosh from "../../../../data/niosh-pocket-guide-2005/source.json" with { type: "json" };
import osha from "../../../../data/osha-1910-1000/source.json" with { type: "json" };
import trgs from "../../../../data/trgs-900/source.json" with { type: "json" };
import type { GasUnits } from "./molar-volume.ts";
import { averagingSchema, type OwnLimit, type SolventInput, solventNames } from "./solvent-input.ts";
import type { LimitRow } from "./solvent-output.ts";

const limitFile = z.looseObject({
  id: z.string(),
  verification: z.enum(["seen", "memory"]),
  limits: z.array(
    z.strictObject({
      authority: z.string(),
      solvent: z.enum(solventNames),
      ppm: z.number(),
      averagingMin: averagingSchema,
      year: z.int().optional(),
      note: z.string().optional(),
    }),
  ),
});

/** The folders of data/ that hold limits. */
export const limitFiles = [osha, niosh, idlh, quebec, hazMap, eu2000, eu2017, eh40, trgs, weel];

const published = limitFiles.map((file) => limitFile.parse(file));

/** A limit before it is held against anything. */
export type Limit = Pick<LimitRow, "authority" | "year" | "averagingMin" | "kind" | "source" | "mark" | "note" | "ppm">;

/**
 * Every limit of a solvent: published ones, those of its own numbers, those that bind where one works.
 * @source the folders of data/ that hold limits; docs/methods/solvent.md C9
 */
export function limitsOf({ solvent, furtherLimits = [] }: SolventInput, units: GasUnits): Limit[] {
  const own = [...(typeof solvent === "object" ? solvent.limits : []), ...furtherLimits];
  const known = published.flatMap(({ id, verification, limits }) =>
    limits.flatMap(({ solvent: of, ...limit }) =>
      of === solvent ? [{ ...limit, kind: kindOf(limit.averagingMin), source: id, mark: verification }] : [],
    ),
  );
  return [...known, ...own.map((limit) => ownLimit(limit, units))];
}

function ownLimit({ authority, year, ppm, mgM3, averagingMin, source }: OwnLimit, units: GasUnits): Limit {
  return {
    ...{ authority, averagingMin, source, kind: kindOf(averagingMin), mark: "own" },
    ...(year === undefined ? {} : { year }),
    ppm: ppm ?? units.ppmOf(mgM3 ?? 0),
  };
}

const kindOf = (averagingMin: Limit["averagingMin"]): Limit["kind"] =>
  averagingMin === 0 ? "ceiling" : averagingMin === 480 ? "timeWeighted" : "shortTerm";
