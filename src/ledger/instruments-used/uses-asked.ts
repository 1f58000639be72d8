import type { Use } from "../../core/instrument/life-input.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import type { BindingContext } from "../binding.ts";
import { seatInCanal } from "../course-of-canal-for-instrument/seat-in-canal.ts";
import { type RowUsed, tipOfRow } from "./rows-used.ts";

/** Uses of one instrument as the topics ask for them, or what is missing before they can be asked. */
export type UsesAsked =
  | { readonly uses: readonly Use[]; readonly paths: readonly InputPath[] }
  | { readonly why: string; readonly paths: readonly InputPath[] };

/** The uses of some rows in their order; one that lacks something leaves all of them open, as a part of a life is no bound of it. */
export function usesAsked(rows: readonly RowUsed[], context: BindingContext): UsesAsked {
  const told = rows.map((row, index) => useAsked(row, index, context));
  const missing = told.flatMap((one) => ("why" in one ? [one.why] : []));
  const paths = told.flatMap((one) => one.paths);
  if (missing.length > 0) return { why: sentences([...new Set(missing)]), paths };
  return { uses: told.flatMap((one) => ("use" in one ? [one.use] : [])), paths };
}

const sentences = ([first = "", ...others]: readonly string[]): string =>
  [first, ...others.map((one) => one.charAt(0).toUpperCase() + one.slice(1))].join(". ");

type UseAsked = ({ readonly use: Use } | { readonly why: string }) & { readonly paths: readonly InputPath[] };

function useAsked(used: RowUsed, index: number, context: BindingContext): UseAsked {
  const { row, record, visit } = used;
  const at = `uses[${index}]`;
  const paths: InputPath[] = [{ input: at, record }];
  const motion = motionOf(used);
  const where = row.canal ?? "one canal";
  if (motion === undefined) return { why: `its speed in ${where} is not recorded; say it`, paths };
  if (row.seconds === undefined || row.seconds === 0)
    return { why: `its time in ${where} is not recorded; say the seconds`, paths };
  const seat = seatInCanal({ canal: row.canal, on: visit.body.on, tip: tipOfRow(used) }, context);
  if ("why" in seat) return { ...seat, paths };
  const { course, tipDepthMm } = seat;
  const { engagedFraction, seconds } = row;
  return {
    use: {
      ...{ ...motion, seconds, tipDepthMm },
      course: { points: course.points, sigmaMm: course.sigmaMm },
      ...(engagedFraction === undefined ? {} : { engagedFraction }),
    },
    paths: [
      ...Object.keys(motion).map((field) => ({ input: `${at}.${field}`, record: `${record}/${field}` })),
      { input: `${at}.seconds`, record: `${record}/seconds` },
      ...(engagedFraction === undefined
        ? []
        : [{ input: `${at}.engagedFraction`, record: `${record}/engagedFraction` }]),
      ...seat.paths.map(({ input, record: from }) => ({ input: `${at}.${input}`, record: from })),
    ],
  };
}

/** Turning to and fro where it is said; else turns a minute; undefined where neither stands. */
function motionOf({ row }: RowUsed): Pick<Use, "rpm" | "reciprocation"> | undefined {
  if (row.reciprocation !== undefined) return { reciprocation: row.reciprocation };
  return row.rpm === undefined || row.rpm === 0 ? undefined : { rpm: row.rpm };
}
