import { offeredPrior } from "../../core/diagnosis/test-strength/offered-prior.ts";
import type { TestStrengthInput } from "../../core/diagnosis/test-strength/test-strength-input.ts";
import { testStrengthTopic } from "../../core/diagnosis/test-strength-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type BodyOf, type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, Gap, Question } from "../binding.ts";

type Findings = PartOf<"findings">;
type Tested = BodyOf<"findings">["teeth"][number];
type Asked = Omit<TestStrengthInput["results"][number], "name">;

/** What each sheet's tests make of the probability of a non-vital pulp, where a pulp was there to be tested. */
export const testStrengthBinding: Binding = {
  topic: testStrengthTopic,
  ask: ({ parts }) => partsOf(parts, "findings").flatMap(ofSheet),
};

function ofSheet(findings: Findings): (Question | Gap)[] {
  const { id, body } = findings;
  const place = body.teeth.findIndex(({ role }) => role === "tooth");
  const tooth = body.teeth[place];
  if (tooth === undefined || wasEntered(body) || sensed(tooth).length === 0) return [];
  const told = [...sensed(tooth), ...touched(tooth)];
  const results = told.map(({ asked }) => asked);
  const paths = told.map(
    ({ field }, index): InputPath => ({
      input: `results[${index}].result`,
      record: `${id}/teeth/${place}/${field}`,
    }),
  );
  const subject = `testStrength of ${id}`;
  const prior = priorOf(findings);
  if (prior === undefined) return [{ subject, why: noPriorWhy, inputPaths: paths }];
  const around = aroundReplies(findings);
  return [
    {
      subject,
      input: { ...prior.input, results, ...around.input },
      inputPaths: [...prior.paths, ...paths, ...around.paths],
    },
  ];
}

const noPriorWhy =
  "it is not said how often a tooth like this one is non-vital before any test; give a share, or events of n, in the " +
  `findings, with where it comes from (a published start is ${(offeredPrior.share * 100).toFixed(1)} %: ${offeredPrior.reference})`;

/** A tooth that was filled or opened before has no pulp of its own to reply. */
const wasEntered = ({ onFilm, existing = [] }: BodyOf<"findings">): boolean =>
  onFilm.earlierFilling === "present" || existing.some(({ is }) => is !== "untouched");

interface Told {
  readonly asked: Asked;
  readonly field: string;
}

/** No reply points to a non-vital pulp; a heightened one is a reply. */
function sensed({ cold, heat, electric }: Tested): Told[] {
  const replied = (test: Asked["test"], reply: string | number, field: string): Told[] =>
    reply === "notDone" ? [] : [{ asked: { test, result: reply === "none" ? "positive" : "negative" }, field }];
  return [
    ...replied("cold", cold.reply, "cold/reply"),
    ...replied("heat", heat.reply, "heat/reply"),
    ...replied("electric", electric, "electric"),
  ];
}

const touched = (tooth: Tested): Told[] =>
  (["percussion", "palpation"] as const).flatMap((test): Told[] => {
    const felt = tooth[test];
    return felt === "notDone"
      ? []
      : [{ asked: { test, result: felt === "none" ? "negative" : "positive" }, field: test }];
  });

function priorOf({ id, body }: Findings): { input: object; paths: InputPath[] } | undefined {
  const { share, events, n, dependence } = body.prior ?? {};
  const bound = dependence === undefined ? {} : { dependence };
  const at = (input: string, field: string): InputPath => ({ input, record: `${id}/prior/${field}` });
  const boundPaths = dependence === undefined ? [] : [at("dependence", "dependence")];
  if (events !== undefined && n !== undefined)
    return {
      input: { priorCounts: { events, n }, ...bound },
      paths: [at("priorCounts.events", "events"), at("priorCounts.n", "n"), ...boundPaths],
    };
  if (share === undefined) return undefined;
  return { input: { prior: share, ...bound }, paths: [at("prior", "share"), ...boundPaths] };
}

/** How long after an injury a vital pulp may give no reply (common practice: three months). */
const silentAfterInjuryDays = 92;

/** Whether controls replied, and what may keep a vital pulp silent. */
function aroundReplies({ id, body }: Findings): { input: object; paths: InputPath[] } {
  const { onFilm } = body;
  const silencers = [
    ...(onFilm.apex === "open" ? [{ why: "openApex", field: "onFilm/apex" }] : []),
    ...(wasHurtLately(body) ? [{ why: "trauma", field: "history/trauma" }] : []),
    ...(onFilm.calcified === "yes" ? [{ why: "calcified", field: "onFilm/calcified" }] : []),
  ];
  const replyMayFailFor = silencers.map(({ why }) => why);
  return {
    input: { controls: controlsOf(body), ...(silencers.length === 0 ? {} : { replyMayFailFor }) },
    paths: [
      { input: "controls", record: `${id}/teeth` },
      ...silencers.map(({ field }, index) => ({ input: `replyMayFailFor[${index}]`, record: `${id}/${field}` })),
    ],
  };
}

function wasHurtLately({ takenOn, history }: BodyOf<"findings">): boolean {
  if (history.trauma !== "yes") return false;
  if (history.traumaOn === undefined) return true;
  return Date.parse(takenOn) - Date.parse(history.traumaOn) <= silentAfterInjuryDays * 86_400_000;
}

function controlsOf({ teeth }: BodyOf<"findings">): NonNullable<TestStrengthInput["controls"]> {
  const replies = teeth.filter(({ role }) => role === "control").flatMap(sensed);
  if (replies.length === 0) return "notTested";
  return replies.some(({ asked }) => asked.result === "negative") ? "replied" : "noneReplied";
}
