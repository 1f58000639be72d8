import { canalsTopic } from "../../core/tooth/canals-topic.ts";
import { thePart } from "../../record/parts.ts";
import type { Binding } from "../binding.ts";

/** The roots and canals of the case: sequences, types, code. */
export const canalsBinding: Binding = {
  topic: canalsTopic,
  ask: ({ parts }) => {
    const about = thePart(parts, "case");
    const anatomy = thePart(parts, "anatomy");
    if (about === undefined || anatomy === undefined) return [];
    return [
      {
        subject: `canals of ${anatomy.id}`,
        input: { tooth: about.body.tooth, roots: anatomy.body.roots },
        inputPaths: [
          { input: "tooth", record: `${about.id}/tooth` },
          { input: "roots", record: `${anatomy.id}/roots` },
        ],
      },
    ];
  },
};
