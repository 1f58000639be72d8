import gundogan from "../../../../data/gundogan-2021/source.json" with { type: "json" };
import jain from "../../../../data/jain-solvents/source.json" with { type: "json" };
import khedmat from "../../../../data/khedmat-2015/source.json" with { type: "json" };
import locator from "../../../../data/locator-solvents-2013/source.json" with { type: "json" };
import nalci from "../../../../data/nalci-2021/source.json" with { type: "json" };
import ribeiro from "../../../../data/ribeiro-2006/source.json" with { type: "json" };
import vajrabhaya from "../../../../data/vajrabhaya-2004/source.json" with { type: "json" };
import type { SolventOutput } from "./solvent-output.ts";

/** The sources of the practice points. */
export const practiceFiles = [nalci, khedmat, jain, locator, vajrabhaya, ribeiro, gundogan];

type Point = SolventOutput["practicePoints"][number];

const seen = ({ id, says }: { readonly id: string; readonly says: string }): Point["evidence"][number] => ({
  says: `${says.slice(0, 1).toUpperCase()}${says.slice(1)}.`,
  source: id,
  mark: "seen",
});

/**
 * What is to be known beside the sums, with what speaks against it.
 * @source the folders of data/ that they name; docs/methods/solvent.md C12
 */
export const practicePoints: Point[] = [
  {
    says: "A solvent can soften dentine, the more the longer it stays: keep the contact short. The published results disagree.",
    conflicting: true,
    evidence: [nalci, khedmat].map(seen),
  },
  {
    says: "Measure again with the apex locator once the solvent is out. The published results disagree.",
    conflicting: true,
    evidence: [locator, jain].map(seen),
  },
  {
    says: "A plant oil is not gentler to cells by being one.",
    conflicting: false,
    evidence: [vajrabhaya, ribeiro, gundogan].map(seen),
  },
  {
    says: "A needle that locks in the canal drives the solvent out of the apex: keep it free.",
    conflicting: false,
    evidence: [
      { says: "Taught; no source was read for solvents.", source: "common practice", mark: "common practice" },
    ],
  },
];
