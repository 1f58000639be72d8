import { instrumentTopic } from "../../core/instrument/instrument-topic.ts";
import { type InstrumentGeometry, instrumentsByName } from "../../record/instrument-name.ts";
import { partsOf } from "../../record/parts.ts";
import type { Binding, Question } from "../binding.ts";
import { brokenInstruments } from "../instruments-used/broken-instrument.ts";
import { instrumentAsked, instrumentPaths } from "../instruments-used/instrument-asked.ts";

/** The diameters of each instrument of a visit, each geometry once, and of each one that broke. */
export const instrumentBinding: Binding = {
  topic: instrumentTopic,
  ask: ({ parts }) => [
    ...partsOf(parts, "visit").flatMap(({ id, body }) =>
      instrumentsByName(body.instruments).map(({ name, geometry, rows: [first = 0] }) =>
        shapeOf(`${id} ${name}`, geometry, `${id}/instruments/${first}`),
      ),
    ),
    ...brokenInstruments(parts).flatMap(({ id, body }) =>
      body.instrument === undefined ? [] : [shapeOf(id, body.instrument, `${id}/instrument`)],
    ),
  ],
};

const shapeOf = (about: string, geometry: InstrumentGeometry, record: string): Question => ({
  subject: `instrument of ${about}`,
  input: instrumentAsked(geometry),
  inputPaths: instrumentPaths(geometry, record, ""),
});
