import { z } from "zod";
import australia from "../../../../data/australia-doses-2011/source.json" with { type: "json" };
import canada from "../../../../data/canada-maxima-2022/source.json" with { type: "json" };
import conservative from "../../../../data/conservative-doses-2013/source.json" with { type: "json" };
import malamed from "../../../../data/malamed-2013/source.json" with { type: "json" };
import { type AnaestheticInput, type LimitSetName, limitSetNames, publishedAgents } from "./anaesthetic-input.ts";

/** The limit of one agent in one set: by mass, in all, or both. */
export interface DoseLimit {
  readonly mgPerKg?: number | undefined;
  readonly maxMg?: number | undefined;
  readonly source: string;
  readonly mark: "seen" | "own";
}

/** A set of limits: its name, whose it is in words, and the limit of each agent. */
export interface LimitSet {
  readonly name: LimitSetName | "own";
  readonly says: string;
  readonly limits: ReadonlyMap<string, DoseLimit>;
}

const printed = z.record(z.string(), z.strictObject({ mgPerKg: z.number().optional(), maxMg: z.number().optional() }));

const limitsOf = ({ id, agents }: { readonly id: string; readonly agents: unknown }): ReadonlyMap<string, DoseLimit> =>
  new Map(
    Object.entries(printed.parse(agents)).map(([agent, limit]) => [agent, { ...limit, source: id, mark: "seen" }]),
  );

/** The sources of the published sets. */
export const limitFiles = [malamed, canada, australia, conservative];

const tables = limitFiles.map(limitsOf);

/** Of every table, the lowest mg/kg and the lowest maximum, each with the first table that prints it. */
function lowestOf(agent: string): DoseLimit {
  const rows = tables.flatMap((table) => table.get(agent) ?? []);
  const least = (field: "mgPerKg" | "maxMg") => {
    const [first] = rows.filter((row) => row[field] !== undefined).sort((a, b) => (a[field] ?? 0) - (b[field] ?? 0));
    return first;
  };
  const [byMass, inAll] = [least("mgPerKg"), least("maxMg")];
  const source = [...new Set([byMass, inAll].flatMap((row) => row?.source ?? []))].join(", ");
  return { mgPerKg: byMass?.mgPerKg, maxMg: inAll?.maxMg, source, mark: "seen" };
}

const published: Readonly<Record<LimitSetName, Omit<LimitSet, "name">>> = {
  unitedStatesLabel: {
    says: "maximum recommended doses of the United States' label set, as printed in 2013",
    limits: limitsOf(malamed),
  },
  canada: { says: "Canadian maximum recommended doses, as printed in 2022", limits: limitsOf(canada) },
  australia: { says: "an Australian dose table, as quoted in 2011", limits: limitsOf(australia) },
  conservative: {
    says: "of the sets held here the lowest mg/kg and the lowest maximum of each agent",
    limits: new Map(publishedAgents.map((agent) => [agent, lowestOf(agent)])),
  },
};

/** Every published set. */
export const publishedSets = limitSetNames.map((name) => ({ name, ...published[name] }));

/**
 * The set of limits that a person chose; the United States' label where none is chosen.
 * @source the folders of data/ that {@link limitFiles} names; docs/methods/anaesthetic.md C3
 */
export function chosenSet(asked: AnaestheticInput["limitSet"] = "unitedStatesLabel"): LimitSet {
  if (typeof asked === "string") return { name: asked, ...published[asked] };
  const own = asked.map(({ agent, ...limit }) => [agent, { ...limit, mark: "own" as const }] as const);
  return { name: "own", says: "limits that the person gave", limits: new Map(own) };
}
