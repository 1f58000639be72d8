import type { BodyOf } from "../../../../../record/parts.ts";
import { type AmountWanted, asTyped, oneOf, type RowRead, readAmounts, type Typed } from "./read-typed.ts";

type Bursts = NonNullable<BodyOf<"visit">["ultrasonics"]>;
/** One burst of ultrasound. */
export type Burst = Bursts[number];

/** What ultrasound works on, in words. */
export const workedOnWords: Readonly<Record<Burst["on"], string>> = {
  fragment: "a fragment",
  post: "a post",
  "root canal": "a canal",
};
/** How the tip is cooled, in words. */
export const coolantWords: Readonly<Record<Burst["coolant"], string>> = { none: "dry", air: "air", water: "water" };
/** The alloy of a fragment, in words. */
export const fragmentAlloyWords: Readonly<Record<NonNullable<Burst["alloy"]>, string>> = {
  nickelTitanium: "nickel-titanium",
  steel: "steel",
};

const seconds: AmountWanted = {
  ...{ at: "seconds", unit: "s", low: 0.1, high: 1_800, needed: "for how many seconds?" },
  mistaken: (value) => (value === 0 ? "0 s are no burst" : undefined),
};
const others: readonly AmountWanted[] = [
  { at: "power", unit: "", low: 0, high: 100 },
  { at: "atMin", unit: "min", low: 0, high: 600 },
];
const rest: AmountWanted = {
  ...{ at: "restSeconds", unit: "s", low: 0, high: 7_200 },
  needed: "how long was the pause since the burst before? 0 where there was none",
};

/** What has to be known before the tip works: on what, and how it is cooled. */
export function beforeBurst(typed: Typed): Readonly<Record<string, string>> {
  return {
    ...(oneOf(workedOnWords, typed.on ?? "") === undefined ? { on: "on what?" } : {}),
    ...(oneOf(coolantWords, typed.coolant ?? "") === undefined ? { coolant: "dry, air or water?" } : {}),
  };
}

/** The bursts with the one that the fields tell, and the pause written to the one before it. */
export function readBursts(typed: Typed, before: readonly Burst[]): RowRead<readonly Burst[]> {
  const { values, faults } = readAmounts(typed, [seconds, ...others, ...(before.length > 0 ? [rest] : [])]);
  const all = { ...beforeBurst(typed), ...faults };
  const [on, coolant] = [oneOf(workedOnWords, typed.on ?? ""), oneOf(coolantWords, typed.coolant ?? "")];
  const { restSeconds = 0, seconds: worked, ...more } = values;
  if (Object.keys(all).length > 0 || on === undefined || coolant === undefined || worked === undefined)
    return { faults: all };
  const alloy = on === "fragment" ? oneOf(fragmentAlloyWords, typed.alloy ?? "") : undefined;
  const canal = (typed.canal ?? "").trim();
  const burst: Burst = {
    ...{ on, coolant, seconds: worked, restSeconds: 0, ...more },
    ...(canal === "" ? {} : { canal }),
    ...(alloy === undefined ? {} : { alloy }),
  };
  const last = before.length - 1;
  return { faults: all, row: [...before.map((one, at) => (at === last ? { ...one, restSeconds } : one)), burst] };
}

/** What a burst was made with, as it stands in the fields; the next one is mostly the same. */
export const burstTyped = (burst: Burst | undefined): Typed => ({
  ...{ on: burst?.on ?? "", alloy: burst?.alloy ?? "", coolant: burst?.coolant ?? "", canal: burst?.canal ?? "" },
  power: asTyped(burst?.power),
});

/** `12 s on a fragment in MB1, dry`. */
export const burstInWords = ({ seconds: worked, on, canal, coolant }: Burst): string =>
  `${worked} s on ${workedOnWords[on]}${canal === undefined ? "" : ` in ${canal}`}, ${coolantWords[coolant]}`;
