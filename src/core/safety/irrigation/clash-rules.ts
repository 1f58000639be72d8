import arratia from "../../../../data/arratia-2019/source.json" with { type: "json" };
import basrani from "../../../../data/basrani-2007/source.json" with { type: "json" };
import clarkson from "../../../../data/clarkson-2011/source.json" with { type: "json" };
import grawehr from "../../../../data/grawehr-2003/source.json" with { type: "json" };
import khatib from "../../../../data/khatib-2020/source.json" with { type: "json" };
import chlorine from "../../../../data/niosh-chlorine/source.json" with { type: "json" };
import orhan from "../../../../data/orhan-2016/source.json" with { type: "json" };
import wright from "../../../../data/wright-2017/source.json" with { type: "json" };
import { solutionNames } from "./irrigation-input.ts";
import type { Clash } from "./irrigation-output.ts";
import { isAcid } from "./solution-kinds.ts";

/** What happens when two solutions meet, in either order. */
export interface ClashRule extends Pick<Clash, "what" | "remedy" | "source" | "mark"> {
  readonly meets: (one: string, other: string) => boolean;
}

/** The sources that clashes quote. */
export const clashFiles = [khatib, orhan, basrani, wright, chlorine, grawehr, clarkson, arratia];

const pair =
  (a: string, b: string) =>
  (one: string, other: string): boolean =>
    one === a && other === b;

const dry = "take up what stands in the canal, rinse with sterile water, take it up, and only then go on";

const rules: readonly ClashRule[] = [
  {
    meets: pair("sodium hypochlorite", "chlorhexidine"),
    what: `An orange-brown precipitate that can close tubules; whether para-chloroaniline forms is disputed. With 2 % chlorhexidine colour changes from ${basrani.colourPercent} % hypochlorite on, a precipitate falls from ${basrani.precipitatePercent} % on (from memory).`,
    remedy: `Before the second, ${dry}.`,
    source: ids(khatib, orhan, basrani),
    mark: "seen",
  },
  {
    meets: (one, other) => one === "sodium hypochlorite" && isAcid(other),
    what: `Acid sets chlorine gas free from hypochlorite. NIOSH's ceiling over 15 min is ${chlorine.ceilingPpm} ppm (1994); 1 ml of 5.25 % in a closed room of 30 m3 would come to 0.57 ppm, were all of it to react.`,
    remedy: `Never mix them. Before the second, ${dry}; suction at the tooth, fresh air.`,
    source: ids(wright, chlorine),
    mark: "seen",
  },
  {
    meets: pair("sodium hypochlorite", "EDTA"),
    what: `EDTA takes the free chlorine: 1:1 with 17 % EDTA ${grawehr.withEdtaPercent} % was left of 1 % hypochlorite, ${grawehr.withWaterPercent} % with water; 9:1 lost ${clarkson.lossPercent.low} to ${clarkson.lossPercent.high} % in about 5 min. Hypochlorite no longer dissolves tissue.`,
    remedy: `Use them one after the other, never together; between them ${dry}.`,
    source: ids(grawehr, clarkson),
    mark: "seen",
  },
  {
    meets: pair("EDTA", "chlorhexidine"),
    what: "A white precipitate, a salt that holds chlorhexidine.",
    remedy: `Before the second, ${dry}.`,
    source: ids(arratia),
    mark: "seen",
  },
  {
    meets: pair("sodium hypochlorite", "hydrogen peroxide"),
    what: "Oxygen is set free: gas in the canal, and both are used up.",
    remedy: `Leave one of them out, or between them ${dry}.`,
    source: "common practice",
    mark: "common practice",
  },
  {
    meets: pair("saline", "chlorhexidine"),
    what: "A salt of chlorhexidine can fall out in saline.",
    remedy: "Rinse with sterile water in place of saline beside chlorhexidine.",
    source: "common practice",
    mark: "common practice",
  },
];

function ids(...files: readonly { readonly id: string }[]): string {
  return files.map(({ id }) => id).join(", ");
}

/**
 * What happens when two solutions meet, whichever comes first; undefined where nothing is known to.
 * @source the folders of data/ that {@link clashFiles} names; docs/methods/irrigation.md C1
 */
export const clashRule = (one: string, other: string): ClashRule | undefined =>
  rules.find(({ meets }) => meets(one, other) || meets(other, one));

/**
 * Whether a solution is known to clash with any other; of one's own, and of iodine, nothing is known here.
 * @source docs/methods/irrigation.md C2
 */
export const isKnownToClash = (name: string): boolean =>
  solutionNames.some((other) => clashRule(name, other) !== undefined);
