import type { z } from "zod";
import { type OutcomeRow, planSources } from "../../diagnosis/plan/plan-sources.ts";
import type { fromSchema } from "../removal-output.ts";
import type { Count } from "./denominators.ts";

/** A published figure as it is shown. */
export type From = z.infer<typeof fromSchema>;

/** The sources whose outcomes are read, as they stand in the plan's list. */
export const outcomeSourceIds = [
  ...["spili-2005", "panitvisai-2010", "mente-2010", "gorni-2022", "siew-2015", "de-chevigny-2008-retreatment"],
  ...["farzaneh-2004", "barone-2010", "pinto-2020", "setzer-2010", "ng-2011-survival", "hjalmarsson-2016"],
  ...["torabinejad-2015"],
];

function published(source: string, id: string): { row: OutcomeRow; mark: "seen" | "memory" } {
  const file = planSources.find((one) => one.id === source);
  const row = file?.outcomes.find((one) => one.id === id);
  if (file === undefined || row === undefined) throw new RangeError(`${source} has no outcome ${id}`);
  return { row, mark: row.mark ?? file.verification };
}

/** The printed share of a row of the plan's sources. */
export const publishedShare = (source: string, id: string): number => published(source, id).row.proportion ?? 0;

/** The count of a published row; where a share and a number are printed alone, the count that gives it. */
export function publishedCount(source: string, id: string): Count {
  const { events, n = 0, proportion = 0 } = published(source, id).row;
  return { events: events ?? Math.round(proportion * n), n };
}

/** A row of the plan's sources as it is shown; it stands beside until a sum draws from it. */
export function fromPublished(source: string, id: string): From {
  const { row, mark } = published(source, id);
  const { events, n } = row;
  return {
    ...{ source, says: `${row.group}: ${row.what}, ${row.followUp}`, column: columnOf(row) },
    ...(events === undefined ? {} : { events }),
    ...(n === undefined ? {} : { n }),
    ...{ share: row.proportion ?? (events ?? 0) / (n ?? 1), inSum: false },
    ...(row.note === undefined ? {} : { note: row.note }),
    mark,
  };
}

/** A row of the plan's sources that a sum draws from, with its count; said where the count follows from the share. */
export function fromSummed(source: string, id: string): From {
  const shown = fromPublished(source, id);
  const implied = shown.events === undefined ? { note: "The count that gives the printed share." } : {};
  return { ...shown, ...publishedCount(source, id), ...implied, inSum: true };
}

const columnOf = ({ kind }: OutcomeRow): From["column"] => (kind === "healing" ? "healed" : "kept");

/** A count as it is shown, from a source that was read. */
export function fromCount(source: string, { events, n }: Count, says: string): From {
  return { source, says, column: "healed", events, n, share: events / n, inSum: true, mark: "seen" };
}
