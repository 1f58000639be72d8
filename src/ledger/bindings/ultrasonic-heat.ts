import { ultrasonicHeatTopic } from "../../core/safety/ultrasonic-heat-topic.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, Question } from "../binding.ts";
import { heatSubject } from "../heat-told.ts";
import { byMinute } from "../visit-sums/by-minute.ts";

/** The ultrasound of each visit that records any. */
export const ultrasonicHeatBinding: Binding = {
  topic: ultrasonicHeatTopic,
  ask: ({ parts }) => partsOf(parts, "visit").flatMap(heatOf),
};

function heatOf({ id, body: { ultrasonics = [] } }: PartOf<"visit">): Question[] {
  const worked = byMinute(ultrasonics).filter(({ row }) => row.seconds > 0);
  if (worked.length === 0) return [];
  const bursts = worked.map(({ row: { atMin: _at, canal: _canal, power, ...burst } }) => ({
    ...burst,
    // A power of 0 is no power that was set: the device shows none.
    ...(power === undefined || power === 0 ? {} : { power }),
  }));
  const inputPaths = worked.map(({ index }, at) => ({ input: `bursts[${at}]`, record: `${id}/ultrasonics/${index}` }));
  return [{ subject: heatSubject(id), input: { bursts }, inputPaths }];
}
