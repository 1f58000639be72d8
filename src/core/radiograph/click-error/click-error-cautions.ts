import type { ClickErrorInput } from "./click-error-input.ts";
import type { ClickErrorOutput } from "./click-error-output.ts";

/** Fewer pairs than this leave an interval of over 25 % to either side. */
const fewPairs = 16;

type Found = Pick<ClickErrorOutput, "n" | "sigmaPx" | "intervals" | "outliers" | "without"> & {
  /** By kind, without the pairs that are out of line. */
  readonly inLine: readonly ClickErrorOutput["byName"][number][];
};

/**
 * What a reader of a click's error must know beside it.
 * @source docs/methods/click-error C7
 */
export function clickErrorCautions(input: ClickErrorInput, found: Found): string[] {
  return [
    "It holds for the screen, the zoom and the films that it was measured on; a pixel of another size is another length.",
    ...(input.films === "made"
      ? ["The films are made: edges on films of patients may be less clear, and the error larger."]
      : []),
    "An error that is made the same way both times is not in it.",
    ...fewness(found),
    ...drift(found),
    ...outlying(found),
    ...unlike(found.inLine),
    ...(found.sigmaPx === 0
      ? ["Both marks of every pair are the same to the last digit: this is no click error."]
      : []),
  ];
}

const fewness = ({ n }: Found): string[] => (n < fewPairs ? [`Few pairs (${n}): the interval is wide.`] : []);

function drift({ intervals }: Found): string[] {
  const { driftColumnPx, driftRowPx } = intervals;
  const moved = [driftColumnPx, driftRowPx].some((one) => one !== undefined && (one.low > 0 || one.high < 0));
  return moved ? ["The second marks lie to one side of the first on the whole; the error holds that drift too."] : [];
}

function outlying({ outliers, without, sigmaPx }: Found): string[] {
  if (outliers.length === 0 || without === undefined) return [];
  const pairs = outliers.length === 1 ? "1 pair lies" : `${outliers.length} pairs lie`;
  return [
    `${pairs} farther apart than click error explains: ${sigmaPx.toFixed(2)} px with, ${without.sigmaPx.toFixed(2)} px without.`,
  ];
}

/** Kinds of place whose intervals do not meet: one number stands between them. */
function unlike(inLine: Found["inLine"]): string[] {
  const sorted = [...inLine].sort((a, b) => a.sigmaPx - b.sigmaPx);
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (least === undefined || most === undefined || least.interval.high >= most.interval.low) return [];
  const named = ({ name, sigmaPx }: { name: string; sigmaPx: number }) => `${name} ${sigmaPx.toFixed(2)} px`;
  return [`Kinds of place differ: ${named(least)}, ${named(most)}; one number for both lies between them.`];
}
