import { calibrateTopic } from "../../core/radiograph/calibrate-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, Question } from "../binding.ts";
import { type MarkOf, marksOn } from "../marks-on.ts";

/** The scale of each film, from what its file says and from the known lengths marked on it. */
export const calibrateBinding: Binding = {
  topic: calibrateTopic,
  ask: ({ parts, settings }) =>
    partsOf(parts, "film").map((film) => scaleOf(film, marksOn(parts, film.id, "knownLength"), settings.clickSigmaPx)),
};

function scaleOf(film: PartOf<"film">, known: readonly MarkOf<"knownLength">[], sigmaPx: number): Question {
  const { detectorSpacingMm, pixelSpacingMm, calibrationType, magnification } = film.body.technical;
  const file = { detectorSpacingMm, pixelSpacingMm, calibrationType, magnification };
  const stated = Object.fromEntries(Object.entries(file).filter(([, value]) => value !== undefined));
  return {
    subject: `calibrate of ${film.id}`,
    input: { known: known.map(({ body }) => asKnown(body, sigmaPx)), ...stated },
    inputPaths: [
      ...known.flatMap((mark, index) => pathsOfKnown(mark, index)),
      ...Object.keys(stated).map((field): InputPath => ({ input: field, record: `${film.id}/technical/${field}` })),
    ],
  };
}

function asKnown({ object, lengthMm, from, to, sigmaPx }: MarkOf<"knownLength">["body"], usual: number) {
  return { kind: object === "sphere" ? "sphere" : "length", lengthMm, from, to, sigmaPx: sigmaPx ?? usual };
}

function pathsOfKnown({ id, body }: MarkOf<"knownLength">, index: number): InputPath[] {
  const sigma = body.sigmaPx === undefined ? "settings/clickSigmaPx" : `${id}/sigmaPx`;
  const fields = ["lengthMm", "from", "to"].map((field) => ({
    input: `known[${index}].${field}`,
    record: `${id}/${field}`,
  }));
  return [...fields, { input: `known[${index}].sigmaPx`, record: sigma }];
}
