import { cropFilm } from "../src/imaging/crop.ts";
import { encodePng16 } from "../src/imaging/encode-png16.ts";
import type { FilmPixels } from "../src/imaging/film-pixels.ts";
import { deriveLedger } from "../src/ledger/derive-ledger.ts";
import { topicList } from "../src/ledger/topic-list.ts";
import type { CaseSource } from "../src/pages/case-source.ts";
import { guideSources } from "../src/record/mishap-guide/guide-sources.ts";
import { type BodyOf, type Part, type PartKind, partTypes } from "../src/record/parts.ts";
import { firstSettings } from "../src/record/settings.ts";

/** A film of nothing but a soft ramp, for tests that need pixels and not a tooth. */
function rampFilm(columns: number, rows: number): FilmPixels {
  const samples = Uint16Array.from({ length: columns * rows }, (_, at) => ((at % columns) * 4095) / columns);
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  const film: FilmPixels = { columns, rows, bitsStored: 12, samples, photometric: "MONOCHROME2", technical };
  return cropFilm(film, { column: 0, row: 0, columns, rows });
}

/** The kept bytes of the sample's film. */
export const sampleFilmBytes = (): Uint8Array => encodePng16(rampFilm(600, 800));
const hash = "ab".repeat(32);

/** A part as it stands after its first change; the body is checked by the record's own form. */
export function part<Kind extends PartKind>(kind: Kind, id: string, body: BodyOf<Kind>): Part {
  return { id, kind, revision: 1, body: partTypes[kind].body.parse(body) } as Part;
}

/** The canal's course on the sample's film: straight 10 mm, then an arc of radius 5 mm turning 60 degrees, 0.05 mm a pixel. */
export function samplePoints(): [number, number][] {
  const straight = Array.from({ length: 41 }, (_, at): [number, number] => [300, 100 + at * 5]);
  const arc = Array.from({ length: 20 }, (_, at): [number, number] => {
    const turn = ((at + 1) / 20) * (Math.PI / 3);
    return [300 + 100 * (1 - Math.cos(turn)), 300 + 100 * Math.sin(turn)];
  });
  return [...straight, ...arc];
}

/** An upper first molar with one film, two visits and a recall. */
export function sampleParts(long = ""): Part[] {
  const row: BodyOf<"visit">["canals"][number] = {
    canal: "MB1",
    state: "shaped",
    patency: "patent",
    locatorMm: 15.4,
    reference: `mesiobuccal cusp ${long}`.slice(0, 300).trim(),
    workingLengthMm: 14.7,
    apicalSize: 25,
    taper: 0.06,
  };
  const visit: Omit<BodyOf<"visit">, "on" | "minutes" | "canals" | "irrigation"> = {
    aim: long.slice(0, 300),
    holdPoints: [],
    timeOut: "toothAndSideChecked",
    historyConfirmed: true,
    isolation: { rubberDam: "used" },
    magnification: "microscope",
    anaesthetic: [],
    instruments: [],
    solvent: [],
    lots: [],
    films: [],
    flareUp: "none",
    told: long,
    note: long,
  };
  const irrigation: BodyOf<"visit">["irrigation"] = [
    { solution: "sodium hypochlorite", percent: 3, volumeMl: 10, minutes: 12, activated: "ultrasonic" },
  ];
  return [
    part("case", "about", {
      pseudonym: "P-0001",
      birthYear: 1967,
      sex: "female",
      tooth: "26",
      treatment: "retreatment",
      presentedOn: "2024-03-04",
      complaint: `Pain on biting ${long}`,
      referredFor: "Retreatment",
      background: long,
      demo: false,
    }),
    part("anatomy", "roots", {
      roots: [
        { name: "MB", side: "buccal", levels: [2, 1], orifices: ["MB1", "MB2"] },
        { name: "DB", levels: [1] },
        { name: "P", levels: [1] },
      ],
      foundBy: ["microscope"],
      filledBefore: ["MB1", "DB", "P"],
    }),
    part("diagnosis", "diagnosis-1", {
      madeOn: "2024-03-04",
      taxonomy: "consensus2009",
      pulpal: "previouslyTreated",
      apical: "symptomaticApicalPeriodontitis",
      because: `Filled before, tender to percussion ${long}`,
    }),
    part("film", "film-1", {
      hash,
      columns: 600,
      rows: 800,
      bitsStored: 12,
      takenOn: "2024-03-04",
      purpose: "workingLength",
      receptor: "unknown",
      uRunsTo: "unknown",
      caption: "Length film",
      technical: {
        sourceFormat: "dicom",
        sourceSha256: hash,
        pixelSpacingMm: [0.05, 0.05],
        calibrationType: "geometry",
        wasColour: false,
        lossy: false,
        inverted: false,
      },
    }),
    part("mark", "trace-1", {
      shape: "trace",
      film: "film-1",
      canal: "MB1",
      polarity: "dark",
      sigmaPx: 0.2,
      anchors: [
        [300, 100],
        [350, 386],
      ],
      points: samplePoints(),
    }),
    part("visit", "visit-1", { ...visit, on: "2024-03-04", minutes: 80, canals: [row], irrigation }),
    part("visit", "visit-2", {
      ...visit,
      on: "2024-03-27",
      minutes: 70,
      canals: [{ ...row, state: "filled", filledWith: "gutta-percha and sealer", fillingEndMm: 0.8 }],
      irrigation,
    }),
    part("recall", "recall-1", {
      on: "2024-09-25",
      retained: "retained",
      functional: "yes",
      symptoms: "none",
      percussion: "none",
      palpation: "none",
      sinusTract: "none",
      swelling: "none",
      mobility: 0,
      restoration: "sound",
      onFilm: "smaller",
      imaging: "film",
      readings: [{ reader: "resident", score: 3, blind: true }],
      note: long,
    }),
  ];
}

/** The sample as documents read it, with its ledger. */
export function sampleSource(parts: readonly Part[] = sampleParts()): CaseSource {
  const topics = topicList();
  return {
    caseId: "case-sample",
    parts,
    ledger: deriveLedger({
      caseId: "case-sample",
      parts,
      settings: firstSettings,
      at: "2024-10-01T10:00:00Z",
      known: () => undefined,
    }),
    references: new Map(
      [...guideSources, ...topics.flatMap(({ sources }) => sources)].map((source) => [source.id, source]),
    ),
    methods: new Map(topics.map(({ name, summary }) => [name, summary])),
    notation: "twoDigit",
    theme: "paper",
  };
}
