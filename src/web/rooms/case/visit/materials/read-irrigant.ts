import type { BodyOf } from "../../../../../record/parts.ts";
import { activatedWords, solutionWords } from "../../../../../record/words/visit-words.ts";
import { type AmountWanted, asTyped, oneOf, type RowRead, readAmounts, type Typed } from "./read-typed.ts";

/** One irrigant of a visit. */
export type Irrigant = BodyOf<"visit">["irrigation"][number];
/** How a needle stood. */
export type Needle = NonNullable<Irrigant["needle"]>;

const wanted: readonly AmountWanted[] = [
  {
    ...{ at: "percent", unit: "%", low: 0, high: 100 },
    mistaken: (value) =>
      value > 100 ? `${value} looks like no strength in percent; 5.25 % is written 5.25` : undefined,
  },
  { at: "volumeMl", unit: "ml", low: 0, high: 200, needed: "how many millilitres?" },
  { at: "minutes", unit: "min", low: 0, high: 120, needed: "for how many minutes?" },
  { at: "atMin", unit: "min", low: 0, high: 600 },
];
const needleWanted: readonly AmountWanted[] = [
  {
    ...{ at: "depthFromStopMm", unit: "mm", low: 0, high: 30 },
    needed: "how far short of the stop did its tip stay?",
  },
  {
    at: "gauge",
    unit: "",
    low: 18,
    high: 36,
    mistaken: (value) => (Number.isInteger(value) ? undefined : "a gauge is a whole number, as 30"),
  },
  { at: "flowMlPerMin", unit: "ml/min", low: 0, high: 120 },
];

/** The irrigant that the fields tell; the needle where one is told. */
export function readIrrigant(typed: Typed): RowRead<Irrigant> {
  const solution = oneOf(solutionWords, typed.solution ?? "");
  const activated = oneOf(activatedWords, typed.activated ?? "");
  const named = (typed.named ?? "").trim();
  const { values, faults } = readAmounts(typed, wanted);
  const needle = readNeedle(typed);
  const all = {
    ...{ ...faults, ...needle.faults },
    ...(solution === undefined ? { solution: "which solution?" } : {}),
    ...(solution === "other" && named === "" ? { named: "what is it called?" } : {}),
    ...(activated === undefined ? { activated: "was it activated?" } : {}),
  };
  const { volumeMl, minutes, ...others } = values;
  if (Object.keys(all).length > 0 || solution === undefined || activated === undefined) return { faults: all };
  if (volumeMl === undefined || minutes === undefined) return { faults: all };
  const canal = (typed.canal ?? "").trim();
  return {
    faults: all,
    row: {
      ...{ solution, volumeMl, minutes, activated, ...others },
      ...(solution === "other" ? { named } : {}),
      ...(canal === "" ? {} : { canal }),
      ...(needle.row === undefined ? {} : { needle: needle.row }),
    },
  };
}

/** The needle that the fields tell; none is told while its kind is not chosen. */
function readNeedle(typed: Typed): RowRead<Needle> {
  const kind = typed.needle ?? "";
  if (kind === "") return { faults: {} };
  const { values, faults } = readAmounts(typed, needleWanted);
  const { depthFromStopMm, ...others } = values;
  if (Object.keys(faults).length > 0 || depthFromStopMm === undefined) return { faults };
  const moved = typed.freeMovement ?? "";
  return {
    faults,
    row: {
      ...{ depthFromStopMm, sideVented: kind === "sideVented", ...others },
      ...(moved === "" ? {} : { freeMovement: moved === "free" }),
    },
  };
}

/** A needle as it stands in the fields. */
export const needleTyped = (needle: Needle | undefined): Typed =>
  needle === undefined
    ? { needle: "", depthFromStopMm: "", gauge: "", flowMlPerMin: "", freeMovement: "" }
    : {
        needle: needle.sideVented ? "sideVented" : "open",
        depthFromStopMm: asTyped(needle.depthFromStopMm),
        gauge: asTyped(needle.gauge),
        flowMlPerMin: asTyped(needle.flowMlPerMin),
        freeMovement: needle.freeMovement === undefined ? "" : needle.freeMovement ? "free" : "locked",
      };

/** What is known of an irrigant before it is typed. */
type IrrigantTold = { readonly [Field in keyof Irrigant]?: Irrigant[Field] | undefined };

/** An irrigant as it stands in the fields, without its minute. */
export const irrigantTyped = ({ needle, ...row }: IrrigantTold = {}): Typed => ({
  ...{ solution: row.solution ?? "", named: row.named ?? "", activated: row.activated ?? "", canal: row.canal ?? "" },
  ...{ percent: asTyped(row.percent), volumeMl: asTyped(row.volumeMl), minutes: asTyped(row.minutes) },
  ...needleTyped(needle),
});

/** `sodium hypochlorite 3 %`. */
export function irrigantInWords({
  solution,
  named,
  percent,
}: Pick<Irrigant, "solution" | "named" | "percent">): string {
  const name = solution === "other" ? (named ?? "another solution") : solutionWords[solution];
  return percent === undefined ? name : `${name} ${percent} %`;
}

/** `side-vented, gauge 30, 2 mm short of the stop, moved freely`. */
export const needleInWords = ({ sideVented, gauge, depthFromStopMm, flowMlPerMin, freeMovement }: Needle): string =>
  [
    sideVented ? "side-vented" : "open-ended",
    ...(gauge === undefined ? [] : [`gauge ${gauge}`]),
    `${depthFromStopMm} mm short of the stop`,
    ...(flowMlPerMin === undefined ? [] : [`${flowMlPerMin} ml/min`]),
    ...(freeMovement === undefined ? [] : [freeMovement ? "moved freely" : "locked"]),
  ].join(", ");
