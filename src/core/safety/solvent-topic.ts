import { defineTopic } from "../topic.ts";
import { carcinogenClasses } from "./solvent/carcinogen-classes.ts";
import { extruded } from "./solvent/extruded.ts";
import { practicePoints } from "./solvent/practice-points.ts";
import { roomAnswer } from "./solvent/room-answer.ts";
import { solventBasis } from "./solvent/solvent-basis.ts";
import { solventCautions } from "./solvent/solvent-cautions.ts";
import { solventFacts } from "./solvent/solvent-facts.ts";
import { checkSolvent } from "./solvent/solvent-faults.ts";
import { type SolventInput, solventInput } from "./solvent/solvent-input.ts";
import { type SolventOutput, solventOutput } from "./solvent/solvent-output.ts";
import { solventSources } from "./solvent/solvent-sources.ts";

/**
 * What a solvent makes of the air of the room and beside the mouth, against every published limit by its own averaging time, and how
 * far what passed the foramen lies below a toxic dose.
 * @throws Refusal `input.impossible` for a temperature at which the vapour pressure is not known, a solvent that would boil, a rate
 * that does not belong to its kind of evaporation, a range upside down, a near field as large as the room, a limit or an extrusion
 * given twice or not at all, more extruded than dispensed, a day of more than 24 hours
 * @source Nicas 1996 (memory), Monteiro and others 2011 (seen), the folders of data/ that hold limits; docs/methods/solvent.md
 */
export const solventTopic = defineTopic({
  name: "solvent",
  version: 2,
  summary: "Solvent vapour over the visit against every limit by its own averaging time, and what passed the foramen.",
  input: solventInput,
  output: solventOutput,
  sources: solventSources,
  compute: solvent,
});

function solvent(input: SolventInput): SolventOutput {
  checkSolvent(input);
  const facts = solventFacts(input);
  const { rates, saturated, notComputed, ...room } = roomAnswer(input, facts);
  const carcinogen = carcinogenClasses(input);
  const { extrusion } = input;
  return {
    ...room,
    carcinogen,
    ...(extrusion === undefined ? {} : { extrusion: extruded(extrusion, input, facts) }),
    practicePoints,
    basis: solventBasis(input, rates),
    cautions: solventCautions(input, { rates, saturated, limits: room.limits, carcinogen }),
    notComputed,
  };
}
