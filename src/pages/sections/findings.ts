import { dayOf } from "../../record/facts.ts";
import { type BodyOf, partsOf } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Line, type Page, says } from "../page-model.ts";
import { inWords, sentence } from "../record-words.ts";

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
      row("Electric", ({ electric }) => (typeof electric === "number" ? String(electric) : inWords(electric))),
      row("Percussion", ({ percussion }) => inWords(percussion)),
      row("Palpation", ({ palpation }) => inWords(palpation)),
      row("Bite", ({ bite }) => inWords(bite)),
      row("Mobility", ({ mobility }) => (typeof mobility === "number" ? `grade ${mobility}` : inWords(mobility))),
      row("Probing", probingWords),
    ],
  };
}

const thermalWords = ({ reply, lingersSeconds }: Tested["cold"]): string =>
  lingersSeconds === undefined ? inWords(reply) : `${inWords(reply)}, ${lingersSeconds} s`;

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
  return [...(yes === "" ? [] : [says(`Reports ${yes}`)]), ...(no === "" ? [] : [says(`Denies ${no}`)])];
}

function seen({ seen: read }: Findings): Line[] {
  const parts = [
    ["swelling", read.swelling],
    [
      "sinus tract",
      read.sinusTract === "traced" && read.tracedTo !== undefined ? `traced to ${read.tracedTo}` : read.sinusTract,
    ],
    ["caries", read.caries],
    ["crack", read.crack],
    ["restoration", read.restoration],
  ];
  const found = parts.filter(([, value]) => value !== "" && value !== "notDone");
  if (found.length === 0) return [];
  return [says(sentence(found.map(([name, value]) => `${name} ${inWords(value ?? "")}`).join("; ")))];
}

function onFilm({ onFilm: read }: Findings): Line[] {
  const lucency =
    read.lucencyMm === undefined
      ? inWords(read.lucency)
      : `${inWords(read.lucency)}, ${read.lucencyMm} mm across as read by eye`;
  const filling =
    read.earlierFillingEndMm === undefined
      ? inWords(read.earlierFilling)
      : `${inWords(read.earlierFilling)}, ends ${read.earlierFillingEndMm} mm short`;
  const parts = [
    ["ligament", inWords(read.ligament)],
    ["lamina dura", inWords(read.lamina)],
    ["lucency", lucency],
    ["resorption", inWords(read.resorption)],
    ["apex", inWords(read.apex)],
    ["earlier filling", filling],
  ];
  const done = parts.filter(([, value]) => value !== "not done" && value !== "not asked");
  return done.length === 0 ? [] : [says(`On the film: ${done.map(([name, value]) => `${name} ${value}`).join("; ")}`)];
}

const note = ({ note: text }: Findings): Block[] =>
  text === "" ? [] : [{ kind: "text", heading: "Note", lines: [says(text)] }];
