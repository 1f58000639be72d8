import { sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { boneThreshold, cautionFiles, heatCautions } from "./ultrasonic-heat/heat-cautions.ts";
import { longestRun, secondsTogether } from "./ultrasonic-heat/longest-runs.ts";
import { nearestRises } from "./ultrasonic-heat/nearest-rises.ts";
import { riseFiles } from "./ultrasonic-heat/published-rises.ts";
import { type Burst, type UltrasonicHeatInput, ultrasonicHeatInput } from "./ultrasonic-heat/ultrasonic-heat-input.ts";
import { type UltrasonicHeatOutput, ultrasonicHeatOutput } from "./ultrasonic-heat/ultrasonic-heat-output.ts";

const sources = sourcesOf([...new Set([...riseFiles, ...cautionFiles])]);

/**
 * How long ultrasound worked with and without a coolant, beside what published tables say of conditions near by; never a
 * temperature of this tooth.
 * @source the folders of data/ that it names; docs/methods/ultrasonic-heat.md
 */
export const ultrasonicHeatTopic = defineTopic({
  name: "ultrasonicHeat",
  version: 1,
  summary: "How long ultrasound worked dry or cooled, with rests, beside published rises of temperature.",
  input: ultrasonicHeatInput,
  output: ultrasonicHeatOutput,
  sources,
  compute: ultrasonicHeat,
});

function ultrasonicHeat({ bursts }: UltrasonicHeatInput): UltrasonicHeatOutput {
  const longest = longestRun(bursts, () => true);
  const dry = longestRun(bursts, isDry);
  const tables = bursts.map((burst) => ({ published: nearestRises(burst) }));
  return {
    totals: {
      bursts: bursts.length,
      activeSeconds: secondsTogether(bursts.map(({ seconds }) => seconds)),
      drySeconds: secondsTogether(bursts.filter(isDry).map(({ seconds }) => seconds)),
      restSeconds: secondsTogether(bursts.slice(0, -1).map(({ restSeconds }) => restSeconds)),
    },
    ...(longest === undefined ? {} : { longestBurst: longest }),
    ...(dry === undefined ? {} : { longestDryBurst: dry }),
    bursts: tables,
    threshold: boneThreshold,
    basis: {
      formula: "sums of bursts and rests; published means of the nearest conditions, none between or beyond them",
      assumptions: [
        "Bursts with no rest between are one.",
        "Powers of devices are not one scale: the same number is no more than a hint.",
        "No table that was read tells how fast a rest cools: a rest ends a burst, and cools by an unknown amount.",
      ],
      sources: [
        ...new Set([
          ...tables.flatMap(({ published }) => published.map(({ source }) => source)),
          ...cautionFiles.map(({ id }) => id),
        ]),
      ],
    },
    cautions: heatCautions(bursts, { longest, dry }),
    notComputed: bursts.flatMap((burst, index) => leftOpen(burst, `bursts[${index}]`, tables[index]?.published ?? [])),
  };
}

const isDry = ({ coolant }: Burst): boolean => coolant === "none";

/** What no table says of a burst. */
function leftOpen(
  { seconds, on, coolant }: Burst,
  path: string,
  rows: UltrasonicHeatOutput["bursts"][number]["published"],
): UltrasonicHeatOutput["notComputed"] {
  const name = `${path}.riseCelsius`;
  if (rows.length === 0) {
    const how = coolant === "none" ? "without a coolant" : `with ${coolant}`;
    return [{ name, why: `no table that was read has ultrasound on a ${on} ${how}` }];
  }
  const longest = Math.max(...rows.map((row) => row.seconds.high));
  if (seconds > longest) return [{ name, why: `${seconds} s are beyond the ${longest} s of the tables` }];
  return [{ name, why: "tables tell the mean of other teeth, not the temperature of this one" }];
}
