import budd from "../../../../data/budd-2005/source.json" with { type: "json" };
import madarati from "../../../../data/madarati-2013/source.json" with { type: "json" };
import pinter from "../../../../data/pinter-2023/source.json" with { type: "json" };
import type { Burst } from "./ultrasonic-heat-input.ts";
import type { PublishedRise } from "./ultrasonic-heat-output.ts";

/** One printed mean and the condition that it was measured under; what is absent was not told apart there. */
export interface RiseRow extends Pick<PublishedRise, "riseCelsius" | "where" | "seconds" | "conditions" | "source"> {
  readonly sd?: number;
  readonly on: Burst["on"];
  readonly coolant?: Burst["coolant"];
  readonly alloy?: NonNullable<Burst["alloy"]>;
  readonly power?: number;
  /** What was other there than any burst can be told to be. */
  readonly other?: string;
}

/** The sources of the rows. */
export const riseFiles = [madarati, pinter, budd];

const at = (seconds: number): RiseRow["seconds"] => ({ low: seconds, high: seconds });

/** Without air, the tip against the fragment: the rise of the fragment itself. */
function onFragment(
  alloy: NonNullable<Burst["alloy"]>,
  power: number,
  { after15s, after30s }: { readonly after15s: number; readonly after30s: number },
): RiseRow[] {
  const row = { on: "fragment", where: "fragment", coolant: "none", source: madarati.id, alloy, power } as const;
  const conditions = `tip against the fragment, no air, power ${power}`;
  return [
    { ...row, conditions, seconds: at(15), riseCelsius: after15s },
    { ...row, conditions, seconds: at(30), riseCelsius: after30s },
  ];
}

const overAll = {
  on: "fragment",
  where: "fragment",
  source: madarati.id,
  seconds: at(30),
  other: "alloys and powers are not told apart there",
} as const;
const post = { on: "post", source: budd.id, seconds: { low: 30, high: 120 } } as const;
const pooled = "post removal, with and without coolant together; water and air rose less than none";

/**
 * Every printed mean, table by table.
 * @source Madarati 2013, Pinter 2023, Budd 2005 (seen); docs/methods/ultrasonic-heat.md C3
 */
export const publishedRises: readonly RiseRow[] = [
  ...onFragment("nickelTitanium", 1.5, madarati.nickelTitanium),
  ...onFragment("steel", 1.5, madarati.steel),
  ...onFragment("steel", 3, madarati.steelPower3),
  {
    ...overAll,
    coolant: "none",
    conditions: "alloys and powers together, no air",
    riseCelsius: madarati.overallAfter30s.noAir,
  },
  {
    ...overAll,
    coolant: "air",
    conditions: "alloys and powers together, with air",
    riseCelsius: madarati.overallAfter30s.air,
  },
  {
    ...{ on: "fragment", where: "rootSurface", coolant: "water", alloy: "nickelTitanium" },
    conditions: "35 upper incisors, a 4 mm fragment, highest energy, phases with rinsing between: the largest mean",
    other: "rinsed between phases there",
    ...{ seconds: at(pinter.seconds), riseCelsius: pinter.riseCelsius, sd: pinter.sd, source: pinter.id },
  },
  { ...post, where: "rootSurface", conditions: pooled, riseCelsius: budd.root.rise, sd: budd.root.sd },
  { ...post, where: "post", conditions: pooled, riseCelsius: budd.post.rise, sd: budd.post.sd },
];
