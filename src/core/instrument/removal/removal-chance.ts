import { wilsonInterval } from "../../statistics/wilson-interval.ts";
import type { RemovalOutput } from "../removal-output.ts";
import { removalSeries, type SeriesRow } from "./series-rows.ts";

type Chance = RemovalOutput["removalChance"][number];
type Series = (typeof removalSeries)[number];

const order = ["yes", "notKnown", "no"] as const;

/**
 * Every published series by its groups, the groups that this case belongs to first.
 * Takes the facts of the case by their names. A group enters the sum where the case belongs to it and its counts are known;
 * a whole series only where none of its groups does.
 * @source the folders of data/ that it names; docs/methods/removal.md C7 and C8
 */
export function removalChances(facts: ReadonlyMap<string, string>): Chance[] {
  const all = removalSeries.flatMap((series) => series.removal.map((row) => chanceOf(series, row, facts)));
  const rank = ({ matches, by }: Chance): number => order.indexOf(matches) * 2 + (by === "all" ? 1 : 0);
  return [...all].sort((a, b) => rank(a) - rank(b));
}

function chanceOf(series: Series, row: SeriesRow, facts: ReadonlyMap<string, string>): Chance {
  const { by, group, success, events, n, note } = row;
  const share = row.share ?? (events === undefined || n === undefined ? undefined : events / n);
  return {
    ...{ series: series.id, by, group, success },
    ...(events === undefined || n === undefined ? {} : { events, n, interval: wilsonInterval(events, n) }),
    ...(share === undefined ? {} : { share }),
    ...{ implied: row.implied === true, matches: matchOf(row, facts), inSum: isSummed(series, row, facts) },
    ...(note === undefined ? {} : { note }),
    mark: series.verification,
  };
}

function matchOf({ when }: SeriesRow, facts: ReadonlyMap<string, string>): Chance["matches"] {
  const each = Object.entries(when).map(([fact, values]) => {
    const found = facts.get(fact);
    return found === undefined ? "notKnown" : values.includes(found) ? "yes" : "no";
  });
  if (each.includes("no")) return "no";
  return each.includes("notKnown") ? "notKnown" : "yes";
}

function isSummed(series: Series, row: SeriesRow, facts: ReadonlyMap<string, string>): boolean {
  const counted = series.removal.filter((one) => one.n !== undefined && matchOf(one, facts) === "yes");
  const nearer = counted.filter(({ by }) => by !== "all");
  return row.apart !== true && (nearer.length > 0 ? nearer : counted).includes(row);
}
