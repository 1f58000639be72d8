import { canalNames } from "../../../../src/core/tooth/canal-root.ts";
import type { CaseFile } from "../../../../src/record/case-file.ts";
import type { BodyOf } from "../../../../src/record/parts.ts";
import { dayAfter } from "../calendar.ts";
import { caseOfMoments, type Moment, type Writing, write } from "../case-of-moments.ts";
import { mishapsOf } from "./mishaps-of-story.ts";
import { recallsOf } from "./recalls-of-story.ts";
import { sheetOf } from "./sheet-of-story.ts";
import type { Story } from "./story.ts";
import { visitsOf } from "./visits-of-story.ts";
import { becauseOf, complaintOf, referredForOf } from "./words-of-story.ts";

/** A short case of the logbook from its story: four to eight gestures, no films. */
export function shortCase(story: Story): CaseFile {
  const moments = [presenting(story), findings(story), decisions(story), ...treatment(story), ...seenAgain(story)];
  return caseOfMoments(`demo-${String(story.number).padStart(3, "0")}`, moments);
}

function presenting(story: Story): Moment {
  const { number, presentedOn, age, sex, tooth, treatment } = story;
  const flags = flagsOf(story);
  return {
    ...{ day: presentedOn, time: "09:00", words: "Presenting and medical history recorded" },
    writes: [
      write("case", "case-1", {
        pseudonym: `L-${String(number).padStart(4, "0")}`,
        birthYear: Number(presentedOn.slice(0, 4)) - age,
        ...{ sex, tooth, treatment, presentedOn },
        complaint: complaintOf(story),
        referredFor: referredForOf(story),
        background: "",
        demo: true,
      }),
      write("medicalHistory", "history-1", {
        takenOn: presentedOn,
        nothingToNote: flags.length === 0,
        flags,
        medicines: [],
        physicalStatusClass: flags.length === 0 ? 1 : 2,
        note: "",
      }),
    ],
  };
}

function flagsOf({ age, dice }: Story): BodyOf<"medicalHistory">["flags"] {
  if (!dice.chance(age < 35 ? 0.12 : 0.38)) return [];
  return [
    {
      flag: dice.pick([
        ["highBloodPressure", age < 35 ? 0 : 8],
        ["diabetes", age < 35 ? 1 : 4],
        ["asthma", 4],
        ["anticoagulant", age < 50 ? 0 : 3],
        ["antiresorptive", age < 50 ? 0 : 2],
        ["allergyPenicillin", 4],
        ["allergyLatex", 1],
      ]),
    },
  ];
}

const findings = (story: Story): Moment => ({
  ...{ day: story.presentedOn, time: "09:20", words: "Findings recorded" },
  writes: [write("findings", "findings-1", sheetOf(story))],
});

const ways = {
  firstTreatment: "treat",
  retreatment: "retreat",
  apicalBarrier: "apicalBarrier",
  vitalPulp: "partialPulpotomy",
  surgery: "surgery",
  watch: "watch",
} as const;

function decisions(story: Story): Moment {
  const { presentedOn, pulpal, apical, treatment: kind, visitsOn, age } = story;
  const chosen = kind === "vitalPulp" && pulpal !== "reversiblePulpitis" ? "fullPulpotomy" : ways[kind];
  const expected = { visitsExpected: Math.max(1, visitsOn.length) };
  return {
    ...{ day: presentedOn, time: "09:35", words: "Diagnosis, plan and consent recorded" },
    writes: [
      write("diagnosis", "diagnosis-1", {
        ...{ madeOn: presentedOn, taxonomy: "consensus2009", pulpal, apical },
        because: becauseOf(story),
      }),
      write("plan", "plan-1", { madeOn: presentedOn, options: [], chosen, because: "", risksNamed: [], ...expected }),
      write("consent", "consent-1", {
        ...{
          on: presentedOn,
          to: "The treatment planned",
          explainedBy: "resident",
          answer: "agreed",
          imagesFor: ["treatment"],
        },
        answeredBy: age < 18 ? "parentOrGuardian" : "patient",
        capacity: age < 18 ? "minor" : "has",
        note: "",
      }),
    ],
  };
}

function treatment(story: Story): Moment[] {
  const visits = visitsOf(story);
  const mishaps = mishapsOf(story);
  return visits.map((body, index) => {
    const id = `visit-${index + 1}`;
    const own = mishaps.filter((mishap) => mishap.visit === id);
    const last = index === visits.length - 1;
    return {
      ...{ day: body.on, time: "11:30", words: last ? "Treatment completed" : "Visit recorded" },
      writes: [
        write("visit", id, body),
        ...(index === 0 ? [anatomy(story)] : []),
        ...own.map((mishap, at) => write("mishap", `mishap-${index + 1}-${at + 1}`, mishap)),
        ...(last ? [handback(story, body.on)] : []),
      ],
    };
  });
}

function anatomy({ roots, treatment: kind, calcified }: Story): Writing {
  const names = roots.flatMap((root) => canalNames(root)).filter((name) => name !== "MB2");
  return write("anatomy", "anatomy-1", {
    roots: [...roots],
    foundBy: calcified ? ["film", "microscope", "troughing"] : ["film", "microscope"],
    ...(kind === "retreatment" || kind === "surgery" ? { filledBefore: names } : {}),
  });
}

function handback({ molar, treatment: kind, dice }: Story, on: string): Writing {
  const cover = molar && kind !== "vitalPulp" && kind !== "surgery";
  return write("handback", "handback-1", {
    on,
    restoreWith: cover ? "Restoration that covers the cusps" : "Composite is final",
    ...(cover ? { restoreBy: dayAfter(on, 42) } : {}),
    orificesMarkedBy: "",
    warnings: "",
    prognosis: dice.chance(0.75) ? "Favourable" : "Guarded",
  });
}

const seenAgain = (story: Story): Moment[] =>
  recallsOf(story).map((body, index) => ({
    ...{
      day: body.on,
      time: "10:00",
      words: body.retained === "lost" ? "Loss of the tooth recorded" : "Recall recorded",
    },
    writes: [write("recall", `recall-${index + 1}`, body)],
  }));
