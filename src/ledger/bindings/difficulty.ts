import { difficultyTopic } from "../../core/diagnosis/difficulty-topic.ts";
import { thePart } from "../../record/parts.ts";
import type { Binding } from "../binding.ts";
import { canalFacts } from "../difficulty-facts/canal-facts.ts";
import { rootFacts } from "../difficulty-facts/root-facts.ts";
import { sheetFacts } from "../difficulty-facts/sheet-facts.ts";
import { treatmentFacts } from "../difficulty-facts/treatment-facts.ts";

/** What makes the tooth of a case harder, by what is recorded and measured of it now. */
export const difficultyBinding: Binding = {
  topic: difficultyTopic,
  ask: (context) => {
    const about = thePart(context.parts, "case");
    if (about === undefined) return [];
    const told = [
      ...sheetFacts(context.parts),
      ...rootFacts(context),
      ...canalFacts(context),
      ...treatmentFacts(context),
    ];
    return [
      {
        subject: `difficulty of ${about.id}`,
        input: { tooth: about.body.tooth, ...Object.fromEntries(told.map(({ field, value }) => [field, value])) },
        inputPaths: [{ input: "tooth", record: `${about.id}/tooth` }, ...told.flatMap(({ paths }) => paths)],
      },
    ];
  },
};
