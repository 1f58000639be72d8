import { dayOf } from "../../record/day-of.ts";
import { type BodyOf, partsOf } from "../../record/parts.ts";
import type { Words } from "../../record/words/case-words.ts";
import {
  apexWords,
  cariesWords,
  crackWords,
  earlierFillingWords,
  exposureWords,
  laminaWords,
  lesionFitsWords,
  ligamentWords,
  lucencyWords,
  painLikeWords,
  replyWords,
  reproducedWords,
  resorptionWords,
  sinusWords,
  swellingAtWords,
  swellingOnsetWords,
  swellingWords,
  touchWords,
  yesNoWords,
} from "../../record/words/finding-words.ts";
import type { CaseSource } from "../case-source.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Line, type Page, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { fillingEnd } from "./canal-table.ts";

type Findings = BodyOf<"findings">;
type Tested = Findings["teeth"][number];

/** Each examination: the tooth beside its controls, what was seen, and what the film shows. */
export function findingsPages({ parts }: CaseSource): Page[] {
  const sheets = partsOf(parts, "findings").sort((a, b) => ((dayOf(a) ?? "") < (dayOf(b) ?? "") ? -1 : 1));
  return sheets.map(({ body }) => ({
    title: "Findings",
    subtitle: momentWords(body.takenOn, parts),
    on: body.takenOn,
    blocks: [testTable(body), ...told([...asked(body), ...seen(body), ...onFilm(body)]), ...note(body)],
    notes: ["A test that was not done stands as not done; it never counts as negative."],
  }));
}

const told = (lines: Line[]): Block[] =>
  lines.length === 0 ? [] : [{ kind: "text", heading: "Asked, seen and read", lines }];

function testTable({ teeth }: Findings): Block {
  const share = 0.76 / teeth.length;
  const row = (name: string, cell: (tested: Tested) => string): Line[] => [
    says(name),
    ...teeth.map((tested) => says(cell(tested))),
  ];
  return {
    kind: "table",
    caption: "Tests on the tooth and its controls",
    columns: [
      { head: "Test", align: "left", share: 0.24 },
      ...teeth.map(({ tooth, role }) => ({
        head: role === "control" ? `${tooth} control` : tooth,
        align: "left" as const,
        share,
      })),
    ],
    rows: [
      row("Cold", ({ cold }) => thermalWords(cold)),
      row("Heat", ({ heat }) => thermalWords(heat)),
      row("Electric", ({ electric }) => (typeof electric === "number" ? String(electric) : replyWords[electric])),
      row("Percussion", ({ percussion }) => touchWords[percussion]),
      row("Palpation", ({ palpation }) => touchWords[palpation]),
      row("Bite", ({ bite }) => touchWords[bite]),
      row("Mobility", ({ mobility }) => (typeof mobility === "number" ? `grade ${mobility}` : "not done")),
      row("Probing", probingWords),
    ],
  };
}

const thermalWords = ({ reply, lingersSeconds }: Tested["cold"]): string =>
  lingersSeconds === undefined ? replyWords[reply] : `${replyWords[reply]}, ${lingersSeconds} s`;

function probingWords({ probingMm }: Tested): string {
  const sites = [
    probingMm.mesiobuccal,
    probingMm.buccal,
    probingMm.distobuccal,
    probingMm.mesiolingual,
    probingMm.lingual,
    probingMm.distolingual,
  ];
  if (sites.every((site) => site === undefined)) return "not done";
  return `${sites.map((site) => (site === undefined ? "–" : String(site))).join(" ")} mm`;
}

function asked({ history }: Findings): Line[] {
  const names = {
    spontaneousPain: "spontaneous pain",
    painToCold: "pain to cold",
    painToHeat: "pain to heat",
    relievedByCold: "relief by cold",
    painOnBiting: "pain on biting",
    trauma: "trauma",
    recentOnset: "recent onset",
    referredPain: "referred pain",
    painToSweet: "pain to sweet",
    nightPain: "pain at night",
    painOnRelease: "pain on release of the bite",
    trismus: "less opening of the mouth",
    troubleSwallowing: "trouble swallowing",
    troubleBreathing: "trouble breathing",
    numbLip: "a numb lip",
  } as const;
  const answered = Object.entries(names).map(([field, name]) => ({
    name,
    answer: history[field as keyof typeof names],
  }));
  const listed = (answer: string) =>
    answered
      .filter((one) => one.answer === answer)
      .map((one) => one.name)
      .join(", ");
  const yes = listed("yes");
  const no = listed("no");
  const more = described(history);
  const told = [yes === "" ? "" : `Reports ${yes}`, no === "" ? "" : `Denies ${no}`, more === "" ? "" : sentence(more)];
  return told.filter((text) => text !== "").map((text) => says(text));
}

/** What of the history is more than yes or no. */
const described = (history: Findings["history"]): string =>
  answered([
    ["pain to cold lasts", inUnit(history.coldLingersSeconds, "s")],
    ["pain to heat lasts", inUnit(history.heatLingersSeconds, "s")],
    ["trauma on", history.traumaOn ?? ""],
    ["pain like", listOf(history.painLike, painLikeWords)],
    ["brought back", history.reproduced === "notTried" ? "" : wordOf(history.reproduced, reproducedWords)],
  ]);

const inUnit = (value: number | undefined, unit: string): string => (value === undefined ? "" : `${value} ${unit}`);
const wordOf = <Value extends string>(value: Value | undefined, words: Words<Value>): string =>
  value === undefined ? "" : words[value];
const listOf = <Value extends string>(values: readonly Value[] | undefined, words: Words<Value>): string =>
  (values ?? []).map((value) => words[value]).join(", ");

function seen({ seen: read }: Findings): Line[] {
  const sinus =
    read.sinusTract === "traced" && read.tracedTo !== undefined
      ? `traced to ${read.tracedTo}`
      : sinusWords[read.sinusTract];
  const told = answered([
    ["swelling", swellingWords[read.swelling]],
    ["swelling at the", listOf(read.swellingAt, swellingAtWords)],
    ["onset of the swelling", wordOf(read.swellingOnset, swellingOnsetWords)],
    ["pus", wordOf(read.pus, yesNoWords)],
    ["lymph nodes", wordOf(read.nodes, yesNoWords)],
    ["sinus tract", sinus],
    ["caries", cariesWords[read.caries]],
    ["pulp exposed", wordOf(read.exposure, exposureWords)],
    ["crack", crackWords[read.crack]],
    ["restoration", read.restoration],
    ["fever", yesNoWords[read.fever]],
    ["temperature", inUnit(read.temperatureC, "°C")],
  ]);
  return told === "" ? [] : [says(sentence(told))];
}

function onFilm({ onFilm: read }: Findings): Line[] {
  const lucency =
    read.lucencyMm === undefined
      ? lucencyWords[read.lucency]
      : `${lucencyWords[read.lucency]}, ${read.lucencyMm} mm across as read by eye`;
  const filling = earlierFillingWords[read.earlierFilling];
  const told = answered([
    ["ligament", ligamentWords[read.ligament]],
    ["lamina dura", laminaWords[read.lamina]],
    ["lucency", lucency],
    ["at root", (read.lucencyAtRoots ?? []).join(", ")],
    ["fits a tooth's infection:", wordOf(read.lesionFits, lesionFitsWords)],
    ["sclerosis", yesNoWords[read.sclerosis]],
    ["resorption", resorptionWords[read.resorption]],
    ["apex", apexWords[read.apex]],
    ["calcified canal", yesNoWords[read.calcified]],
    [
      "earlier filling",
      read.earlierFillingEndMm === undefined ? filling : `${filling}, ends ${fillingEnd(read.earlierFillingEndMm)}`,
    ],
  ]);
  return told === "" ? [] : [says(`On the film: ${told}`)];
}

/** What was answered, one after the other; what was not done or not asked is left out. */
const answered = (pairs: readonly (readonly [string, string])[]): string =>
  pairs
    .filter(([, value]) => !["", "not done", "not asked"].includes(value))
    .map(([name, value]) => `${name} ${value}`)
    .join("; ");

const note = ({ note: text }: Findings): Block[] =>
  text === "" ? [] : [{ kind: "text", heading: "Note", lines: [says(text)] }];
