import iarc from "../../../../data/iarc-monographs/source.json" with { type: "json" };
import idlh from "../../../../data/niosh-idlh-1994/source.json" with { type: "json" };
import niosh from "../../../../data/niosh-pocket-guide-2005/source.json" with { type: "json" };
import type { SolventInput } from "./solvent-input.ts";
import type { SolventOutput } from "./solvent-output.ts";

type Classes = SolventOutput["carcinogen"];

/**
 * How a solvent is classed as a cause of cancer, by whom.
 * @source NIOSH 1994 and 2005, IARC (seen); docs/methods/solvent.md C9
 */
export function carcinogenClasses({ solvent }: Pick<SolventInput, "solvent">): Classes {
  if (solvent === "chloroform")
    return [said(niosh.id, `NIOSH names it ${niosh.carcinogen.chloroform}.`), ofIarc("chloroform")];
  if (solvent === "tetrachloroethylene")
    return [said(idlh.id, `NIOSH names it ${idlh.carcinogen.tetrachloroethylene}.`), ofIarc("tetrachloroethylene")];
  return solvent === "xylene" || solvent === "limonene" ? [ofIarc(solvent)] : [];
}

function ofIarc(solvent: keyof typeof iarc.groups): Classes[number] {
  const group = iarc.groups[solvent];
  const [, meaning] = Object.entries(iarc.meaning).find(([name]) => name === group) ?? [];
  return said(iarc.id, `IARC puts it in group ${group}: ${meaning} (list of ${iarc.listYear}).`);
}

const said = (source: string, says: string): Classes[number] => ({ says, source, mark: "seen" });
