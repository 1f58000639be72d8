import type { ClickPair } from "./click-error-input.ts";
import type { ClickErrorOutput } from "./click-error-output.ts";
import { dahlberg } from "./dahlberg.ts";
import { missOf } from "./miss-of-truth.ts";

/** Fewer pairs than this have no error of their own. */
export const fewestPairs = 5;

type Missing = ClickErrorOutput["notComputed"];
/** Groups that have enough pairs, and the names of those that don't. */
interface Groups<Group> {
  readonly groups: readonly Group[];
  readonly notComputed: Missing;
}

/** The click's error by kind of place, kinds in the order in which they come. */
export function byName(pairs: readonly ClickPair[]): Groups<ClickErrorOutput["byName"][number]> {
  const names = [...new Set(pairs.map(({ name }) => name))];
  return grouped(names, (name) => {
    const alike = pairs.filter((pair) => pair.name === name);
    const missPx = missOf(alike);
    return { alike, group: () => ({ name, ...dahlberg(alike), ...(missPx === undefined ? {} : { missPx }) }) };
  });
}

/** The click's error by what both marks of a pair were made with. */
export function byTool(pairs: readonly ClickPair[]): Groups<ClickErrorOutput["byTool"][number]> {
  const tools = (["pointer", "keyboard"] as const).filter((tool) => madeWith(pairs, tool).length > 0);
  return grouped(tools, (tool) => {
    const alike = madeWith(pairs, tool);
    return { alike, group: () => ({ tool, ...dahlberg(alike) }) };
  });
}

const madeWith = (pairs: readonly ClickPair[], tool: "pointer" | "keyboard"): readonly ClickPair[] =>
  pairs.filter(({ firstBy, secondBy }) => firstBy === tool && secondBy === tool);

function grouped<Name extends string, Group>(
  names: readonly Name[],
  of: (name: Name) => { readonly alike: readonly ClickPair[]; readonly group: () => Group },
): Groups<Group> {
  const all = names.map((name) => ({ name, ...of(name) }));
  return {
    groups: all.flatMap(({ alike, group }) => (alike.length >= fewestPairs ? [group()] : [])),
    notComputed: all
      .filter(({ alike }) => alike.length < fewestPairs)
      .map(({ name, alike }) => ({
        name: `sigmaPx of ${name}`,
        why: `${alike.length} ${alike.length === 1 ? "pair" : "pairs"}; ${fewestPairs} are needed`,
      })),
  };
}
