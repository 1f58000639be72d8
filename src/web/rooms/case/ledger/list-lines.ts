import { difficultyTold, groupWords } from "../../../../ledger/difficulty-told.ts";
import { planTold } from "../../../../ledger/plan-told.ts";
import { wayWords } from "../../../../record/words/case-words.ts";
import { countOf } from "../../../parts/figures-in-words.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { fitLines, fractureLines, instrumentLines, lifeLines, removalLines } from "./instrument-lines.ts";
import type { LedgerLine } from "./ledger-line.ts";
import { anaestheticLines, heatLines, irrigationLines, solventLines } from "./visit-lines.ts";

/** What the entry of such an answer is called. */
export const listNames: Readonly<Record<string, string>> = {
  plan: "Ways of this tooth",
  difficulty: "What makes it harder",
  instrument: "Diameters",
  lifeUsed: "Life used",
  fit: "Instruments that fit the piece",
  fracture: "How it broke",
  removal: "Its removal weighed",
  anaesthetic: "Anaesthetic",
  solvent: "Solvent",
  irrigation: "Irrigants",
  ultrasonicHeat: "Ultrasound",
};

/** The lines of an answer that is a list and no number: the first says how much is in it. */
export const listLines: Readonly<Record<string, (output: unknown) => readonly LedgerLine[]>> = {
  plan: planLines,
  difficulty: difficultyLines,
  instrument: instrumentLines,
  lifeUsed: lifeLines,
  fit: fitLines,
  fracture: fractureLines,
  removal: removalLines,
  anaesthetic: anaestheticLines,
  solvent: solventLines,
  irrigation: irrigationLines,
  ultrasonicHeat: heatLines,
};

function planLines(output: unknown): readonly LedgerLine[] {
  const told = planTold({ output });
  if (told === undefined) return [];
  const open = told.options.filter(({ standing }) => standing === "open");
  const waiting = told.options.filter(({ standing }) => standing === "needs an answer first");
  return [
    { at: "options", name: "Ways of this tooth", value: `${open.length} open, ${waiting.length} to answer` },
    ...[...open, ...waiting].map(({ way, standing }) => ({
      ...{ at: `options ${way}`, name: sentenceInWords(wayWords[way]), value: standing },
    })),
  ];
}

function difficultyLines(output: unknown): readonly LedgerLine[] {
  const told = difficultyTold({ output });
  if (told === undefined) return [];
  return [
    { at: "facts", name: "What makes it harder", value: countOf(told.facts.length, "fact") },
    ...told.facts.map(({ id, canal = "", group, says }) => ({
      ...{ at: `${id} ${canal}`, name: groupWords[group], value: sentenceInWords(says) },
    })),
  ];
}

const placeNames: Readonly<Record<string, string>> = {
  events: "had it",
  n: "of how many",
  proportion: "share",
  says: "to the patient",
  plain: "to the patient",
  visits: "visits, to the patient",
};

/** A value in the list of ways by its way, as `Retreatment, had it`; undefined for a place in no way. */
export function nameInWays(at: string): string | undefined {
  const [, index, rest = ""] = /^options\[(\d+)\]\.(.+)$/.exec(at) ?? [];
  if (index === undefined) return undefined;
  const way = Object.values<string>(wayWords)[Number(index)];
  const place =
    rest
      .replace(/\[\d+\]/g, "")
      .split(".")
      .at(-1) ?? rest;
  return `${sentenceInWords(way ?? "A way")}, ${placeNames[place] ?? (rest.startsWith("plain") ? "to the patient" : place)}`;
}
