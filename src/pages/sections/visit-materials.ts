import type { BodyOf } from "../../record/parts.ts";
import { confirmationsOf } from "../../record/words/confirmed-words.ts";
import {
  activatedWords,
  agentWords,
  alloyWords,
  holdPointWords,
  medicamentWords,
  movementWords,
  seenByWords,
  solutionWords,
  solventWords,
  vasoconstrictorWords,
} from "../../record/words/visit-words.ts";
import { type Block, type Line, says, type Table } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { taperWords } from "./canal-table.ts";

type Visit = BodyOf<"visit">;

/** Each injection: what, how much, where, when. */
export function anaestheticTable({ anaesthetic }: Visit): Table[] {
  const rows = anaesthetic.map((one) => [
    sentence(solutionInWords(one)),
    `${one.cartridges} × ${one.cartridgeMl} ml`,
    one.technique ?? "–",
    minuteText(one.atMin),
  ]);
  const columns = { Given: 0.42, Cartridges: 0.16, Technique: 0.3, "At minute": 0.12 };
  return tableOf("Local anaesthetic", columns, rows);
}

/** `lidocaine 2 %, epinephrine 1:100 000`. */
export const solutionInWords = (one: Visit["anaesthetic"][number]): string =>
  `${agentWords[one.agent]} ${one.percent} %${vasoconstrictorOf(one.vasoconstrictor)}`;

function vasoconstrictorOf(given: Visit["anaesthetic"][number]["vasoconstrictor"]): string {
  if (given === undefined) return "";
  const ratio = given.ratio === undefined ? "" : ` 1:${inThousands(given.ratio)}`;
  const units = given.iuPerMl === undefined ? "" : ` ${given.iuPerMl} IU/ml`;
  return `, ${vasoconstrictorWords[given.name]}${ratio}${units}`;
}

/** `100 000`, held together. */
const inThousands = (ratio: number): string => String(ratio).replace(/\B(?=(\d{3})+$)/g, "\u00a0");

/** Solvents and irrigants by the minute where every one has it, else as they were written down. */
export function usedTable({ irrigation, solvent }: Visit): Table[] {
  const used = [
    ...solvent.map((dose) => ({
      atMin: dose.atMin,
      cells: [
        sentence(dose.own?.name ?? solventWords[dose.solvent]),
        `${dose.volumeMl} ml`,
        "–",
        recovered(dose.recoveredFraction),
      ],
    })),
    ...irrigation.map((one) => ({
      atMin: one.atMin,
      cells: [
        `${sentence(one.named || solutionWords[one.solution])}${one.percent === undefined ? "" : ` ${one.percent} %`}`,
        `${one.volumeMl} ml`,
        `${one.minutes} min`,
        one.activated === "no" ? "" : activatedWords[one.activated],
      ],
    })),
  ];
  const timed = used.every(({ atMin }) => atMin !== undefined);
  const ordered = timed ? [...used].sort((a, b) => (a.atMin ?? 0) - (b.atMin ?? 0)) : used;
  const columns = { "At minute": 0.12, "Solvent or irrigant": 0.36, Volume: 0.14, For: 0.14, How: 0.24 };
  return tableOf(
    timed ? "Used, in order" : "Used",
    columns,
    ordered.map(({ atMin, cells }) => [minuteText(atMin), ...cells]),
  );
}

const recovered = (fraction: number | undefined): string =>
  fraction === undefined ? "" : `${Math.round(fraction * 100)} % taken up again`;

const minuteText = (minute: number | undefined): string => (minute === undefined ? "–" : String(minute));

/** What was asked before it was recorded: who confirmed it, and why. */
export function confirmedBlock(visit: Visit): Block[] {
  const lines = (["anaesthetic", "solvent", "irrigation"] as const).flatMap((of) => confirmationsOf(visit, of));
  if (lines.length === 0) return [];
  return [
    {
      kind: "text",
      heading: "Asked before it was recorded",
      points: true,
      lines: lines.map((one) => says(sentence(one))),
    },
  ];
}

/** The instruments of each canal in the order of their use, by geometry and alloy. */
export function instrumentTable({ instruments }: Visit): Table[] {
  const canals = [...new Set(instruments.map(({ canal }) => canal ?? "–"))];
  const rows = canals.map((canal) => [
    canal,
    instruments
      .filter((one) => (one.canal ?? "–") === canal)
      .map((one, index, all) => {
        const next = all[index + 1];
        const goesOn = next !== undefined && next.alloy === one.alloy && next.movement === one.movement;
        const how = `${alloyWords[one.alloy]}, ${movementWords[one.movement]}`;
        const turns = one.rpm === undefined ? "" : ` ${one.rpm} a minute`;
        return `${one.size} ${taperWords(one.taper)}${goesOn ? "," : ` ${how}${turns}${next === undefined ? "" : ";"}`}`;
      })
      .join(" "),
  ]);
  return tableOf("Instruments, by size and taper", { Canal: 0.12, "In order": 0.88 }, rows);
}

/** What each canal was filled with and how; canals that were filled alike stand together. */
export function filledWith({ canals }: Visit): Block[] {
  const said = canals.flatMap(({ canal, filledWith: material, technique }) => {
    const words = [material, technique].filter((piece) => piece !== undefined && piece !== "").join(", ");
    return words === "" ? [] : [{ canal, words }];
  });
  const lines = [...new Set(said.map(({ words }) => words))].map((words) =>
    says(
      `${said
        .filter((one) => one.words === words)
        .map(({ canal }) => canal)
        .join(", ")}: ${words}`,
    ),
  );
  return lines.length === 0 ? [] : [{ kind: "text", heading: "Filled with", lines }];
}

/** What stayed in the tooth when the patient left. */
export function leftInTooth(visit: Visit): Block[] {
  const lines = leftInWords(visit).map(says);
  return lines.length === 0 ? [] : [{ kind: "text", heading: "Left in the tooth", lines }];
}

/** The same as words: `Temporary filling: glass ionomer, 4 mm`. */
export function leftInWords({ medicament, temporary, orificeBarrier, buildUp }: Visit): readonly string[] {
  const detail = medicament?.detail === undefined || medicament.detail === "" ? "" : `, ${medicament.detail}`;
  const thickness = temporary?.thicknessMm === undefined ? "" : `, ${temporary.thicknessMm} mm`;
  const left = [
    ["Dressing", medicament && medicament.kind !== "none" ? `${medicamentWords[medicament.kind]}${detail}` : ""],
    ["Temporary filling", temporary === undefined ? "" : `${temporary.material}${thickness}`],
    ["Barrier at the orifice", orificeBarrier ?? ""],
    ["Build-up", buildUp ?? ""],
  ].filter(([, words]) => words !== "");
  return left.map(([name, words]) => `${name}: ${words}`);
}

/** Where the work was held up to be seen, by whom, and what was said. */
export function holdPointTable({ holdPoints }: Visit): Table[] {
  const rows = holdPoints.map(({ at, seenBy, says: said }) => [
    sentence(holdPointWords[at]),
    seenByWords[seenBy],
    said === "" ? "–" : said,
  ]);
  return tableOf("Hold points", { "Hold point": 0.2, Seen: 0.25, Said: 0.55 }, rows);
}

function tableOf(caption: string, shares: Readonly<Record<string, number>>, rows: readonly string[][]): Table[] {
  if (rows.length === 0) return [];
  const columns = Object.entries(shares).map(([head, share]) => ({ head, share, align: "left" as const }));
  return [{ kind: "table", caption, columns, rows: rows.map((row): Line[] => row.map(says)) }];
}
