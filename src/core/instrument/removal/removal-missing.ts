import type { RemovalInput } from "../removal-input.ts";
import type { RemovalOutput } from "../removal-output.ts";

type Weighed = Pick<RemovalOutput, "sightLine" | "platform" | "place">;
type Missing = RemovalOutput["notComputed"];

/**
 * What could not be computed, with the reason.
 * @source docs/methods/removal.md C18
 */
export const removalMissing = (input: RemovalInput, weighed: Weighed): Missing => [
  ...geometryMissing(input, weighed),
  ...when(
    weighed.place.third === undefined,
    "removalChance by third",
    "the third, or a course to the foramen, is not known",
  ),
  ...when(weighed.place.bend === undefined, "removalChance by bend", "where the head lies to the bend is not known"),
  ...when(
    input.headSeen === undefined || input.headSeen === "notLooked",
    "removalChance by visibility",
    "nobody has looked for the head under the microscope",
  ),
  ...when(
    input.lesion === undefined,
    "ways by lesion",
    "whether there was a lesion before is not known: all teeth stand for it",
  ),
  ...when(
    input.stage === undefined || input.stage === "notRecorded",
    "reasons by stage",
    "how far the canal had been cleaned is not recorded; no published series gives healing by it",
  ),
  { name: "removalChance by time", why: "the series that measured it gives no count by time in what was read" },
  { name: "perforation of a bypass", why: "no series counted it for bypassing alone: none is added" },
  {
    name: "kept by way",
    why: "no series counted lost teeth by removal, bypass or leaving: root canal treatments as a whole stand for all three",
  },
];

const when = (holds: boolean, name: string, why: string): Missing => (holds ? [{ name, why }] : []);

function geometryMissing(input: RemovalInput, { sightLine, platform }: Weighed): Missing {
  const { course, fragment, clearanceMm, canalDiameterMm } = input;
  const anyWall = sightLine?.wallLeftMm !== undefined || platform?.wallLeftMm !== undefined;
  const noWall = sightLine !== undefined && sightLine.wallLeftMm === undefined;
  return [
    ...when(
      sightLine === undefined,
      "sightLine",
      `${course === undefined ? "the course" : "the depth of the head"} is not known`,
    ),
    ...when(
      anyWall,
      "intervals of the walls left",
      "the errors of the measured walls and of the course are not told here",
    ),
    ...when(noWall, "sightLine.wallLeftMm", "no wall along the canal is known"),
    ...when(
      platform === undefined,
      "platform",
      `${fragment.headDiameterMm === undefined ? "the head's diameter" : "the clearance of the tip"} is not known`,
    ),
    ...when(
      platform !== undefined && platform.wallLeftMm === undefined && clearanceMm !== undefined,
      "platform.wallLeftMm",
      `${canalDiameterMm === undefined ? "the canal's diameter" : "no wall"} at the head is ${canalDiameterMm === undefined ? "not " : ""}known`,
    ),
  ];
}
