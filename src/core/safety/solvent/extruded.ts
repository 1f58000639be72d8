import chutich from "../../../../data/chutich-1998/source.json" with { type: "json" };
import iris from "../../../../data/epa-iris-chloroform-2001/source.json" with { type: "json" };
import type { SolventFacts } from "./solvent-facts.ts";
import type { ExtrusionAsked, SolventInput } from "./solvent-input.ts";
import type { SolventOutput } from "./solvent-output.ts";

type Extruded = NonNullable<SolventOutput["extrusion"]>;

/** How often the amount is said to lie below the toxic dose; nobody says from where. */
const tradition = { low: 1_000, high: 15_000 };

/** What passed the foramen, in mg. */
export const extrudedMg = ({ massMg, volumeMl = 0 }: ExtrusionAsked, { densityGMl }: SolventFacts): number =>
  massMg ?? volumeMl * densityGMl * 1000;

/**
 * What passed the foramen against each dose that it is to be held to, the lowest margin first.
 * @source the doses' own sources; Chutich and others 1998 (seen); docs/methods/solvent.md C11
 */
export function extruded(asked: ExtrusionAsked, { solvent }: SolventInput, facts: SolventFacts): Extruded {
  const massMg = extrudedMg(asked, facts);
  const doseMgPerKg = massMg / asked.bodyMassKg;
  const margins = heldAgainst(asked, solvent).map((dose) => ({ ...dose, margin: dose.mgPerKg / doseMgPerKg }));
  return {
    massMg,
    doseMgPerKg,
    margins: margins.sort((a, b) => a.margin - b.margin),
    tradition: {
      says: "It is often said that what passes lies 1,000 to 15,000 times below the toxic dose; no source is named for it. For this amount that would make the toxic dose what is told here.",
      impliedMgPerKg: { low: doseMgPerKg * tradition.low, high: doseMgPerKg * tradition.high },
      mark: "common practice",
    },
    measured: measuredOf(solvent),
  };
}

function heldAgainst(
  { toxicDoses }: ExtrusionAsked,
  solvent: SolventInput["solvent"],
): Omit<Extruded["margins"][number], "margin">[] {
  if (toxicDoses !== undefined) return toxicDoses.map((dose) => ({ ...dose, mark: "own" }));
  if (solvent !== "chloroform") return [];
  return [{ kind: "dailyReference", mgPerKg: iris.oralReferenceMgPerKgDay, source: iris.id, mark: "memory" }];
}

function measuredOf(solvent: SolventInput["solvent"]): Extruded["measured"] {
  if (solvent !== "chloroform" && solvent !== "xylene") return [];
  const says = `Out of the apex of ${chutich.teeth} extracted teeth prepared to size 40 came ${chutich.leachedMg[solvent]} mg of ${solvent} on average, which did not differ from the control.`;
  return [{ says, source: chutich.id, mark: "seen" }];
}
