import { toothTopic } from "../../core/tooth/tooth-topic.ts";
import { thePart } from "../../record/parts.ts";
import type { Binding } from "../binding.ts";

/** The tooth of the case in every notation. */
export const toothBinding: Binding = {
  topic: toothTopic,
  ask: ({ parts }) => {
    const about = thePart(parts, "case");
    if (about === undefined) return [];
    return [
      {
        subject: `tooth of ${about.id}`,
        input: { notation: "twoDigit", value: about.body.tooth },
        inputPaths: [{ input: "value", record: `${about.id}/tooth` }],
      },
    ];
  },
};
