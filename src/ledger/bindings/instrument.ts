import { instrumentTopic } from "../../core/instrument/instrument-topic.ts";
import type { SizedInstrument } from "../../record/instrument-as-told.ts";
import { instrumentsByName } from "../../record/instrument-name.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, Gap, Question } from "../binding.ts";
import { brokenInstruments } from "../instruments-used/broken-instrument.ts";
import { instrumentAsked, instrumentPaths } from "../instruments-used/instrument-asked.ts";
import { instrumentThatBroke } from "../instruments-used/instrument-that-broke.ts";

/** The diameters of each instrument of a visit, each geometry once, and of each one that broke. */
export const instrumentBinding: Binding = {
  topic: instrumentTopic,
  ask: ({ parts }) => [
    ...partsOf(parts, "visit").flatMap(({ id, body }) =>
      instrumentsByName(body.instruments).map(({ name, geometry, rows: [first = 0] }) =>
        shapeOf(`${id} ${name}`, geometry, `${id}/instruments/${first}`),
      ),
    ),
    ...brokenInstruments(parts).flatMap((mishap): (Question | Gap)[] => {
      const broke = instrumentThatBroke(mishap);
      if (broke === undefined) return [];
      if ("why" in broke) return [{ subject: `instrument of ${mishap.id}`, ...broke }];
      return [shapeOf(mishap.id, broke.geometry, broke.record)];
    }),
  ],
};

const shapeOf = (about: string, geometry: SizedInstrument, record: string): Question => ({
  subject: `instrument of ${about}`,
  input: instrumentAsked(geometry),
  inputPaths: instrumentPaths(geometry, record, ""),
});
