import type { TestedTooth } from "./diagnosis-input.ts";
import type { Examined } from "./examined.ts";
import { answerIs, anyOf, type Fact, fact, joined, type Truth, yesNoFact } from "./fact.ts";
import { narrowDefectIs, probedSites } from "./probed-sites.ts";

type Touch = "percussion" | "palpation" | "bite";
const touches: readonly Touch[] = ["percussion", "palpation", "bite"];

/** What touch, probing, soft tissues and tract say of the tissues round the tooth. @source docs/methods/diagnosis, C6 and C8 */
export function tissueFacts({ input: { history, seen, medical }, tooth, controls }: Examined) {
  const [percussion, palpation, bite] = [
    touchOf(tooth, "percussion"),
    touchOf(tooth, "palpation"),
    touchOf(tooth, "bite"),
  ];
  const biting = yesNoFact(history.painOnBiting, "pain on biting", "history.painOnBiting");
  const touched = [percussion, palpation, bite];
  const pressed = [percussion, bite, biting];
  const hurts = [...touched, biting].some(({ is }) => is === "yes");
  const tender = hurts ? "yes" : percussion.is === "no" && palpation.is === "no" ? "no" : "unknown";
  const toothSays = { tracedTo: seen.tracedTo, own: tooth.tooth };
  return {
    tender: joined(tender, [...touched, biting]),
    notTenderSoFar: joined(
      hurts ? "no" : touched.some(({ is }) => is === "no") ? "yes" : "unknown",
      touched.map(turned),
    ),
    painOnPressure: joined(anyOf(pressed.map(({ is }) => is)), pressed),
    bitingTold: biting,
    biteTested: bite,
    ...tractFacts(seen.sinusTract, toothSays),
    narrowPocket: narrowPocket(tooth),
    antiresorptive: yesNoFact(medical.antiresorptive, "an antiresorptive drug", "medical.antiresorptive"),
    controlHurts: controlHurts(controls, tender),
  };
}

function touchOf(tested: TestedTooth, which: Touch): Fact {
  const found = tested[which];
  const words = { none: "not painful", slight: "slightly painful", painful: "painful", notDone: "" }[found];
  return fact(answerIs(found, ["slight", "painful"]), `${which} ${words}`, `tooth ${tested.tooth}: ${which}`);
}

/** A thing that is absent, as a thing that holds. */
const turned = ({ is, says, at }: Fact): Fact => ({ is: is === "no" ? "yes" : is === "yes" ? "no" : is, says, at });

function tractFacts(found: string, { tracedTo, own }: { tracedTo: string | undefined; own: string }) {
  const traced = found === "traced" && tracedTo !== undefined;
  const elsewhere: Truth = traced ? (tracedTo === own ? "no" : "yes") : "unknown";
  const is = answerIs(found, ["present", "traced"]);
  const says = is === "yes" ? `a sinus tract${traced ? ` traced to ${tracedTo}` : ""}` : "no sinus tract";
  return {
    tract: fact(is, says, "seen.sinusTract"),
    traced: fact(is === "yes" ? (traced ? "yes" : "no") : "unknown", says, "seen.sinusTract"),
    tracedElsewhere: fact(elsewhere, says, "seen.tracedTo"),
    tractHere: fact(elsewhere === "yes" ? "unknown" : "yes", "", "seen.tracedTo"),
    tracedToNamed: fact(tracedTo === undefined ? "unknown" : "yes", `a tract traced to ${tracedTo}`, "seen.tracedTo"),
  };
}

/** A narrow deep defect, with the sites that show it. @source docs/methods/diagnosis, C8 */
function narrowPocket({ tooth, probingMm }: TestedTooth): Fact {
  const narrow = probedSites(probingMm).filter((one) => one.narrow === "yes");
  const words = narrow.map(({ site, depth }) => `a narrow probing of ${depth} mm at the ${site} site`).join("; ");
  const is = narrowDefectIs(probingMm);
  return fact(is, is === "yes" ? words : "no narrow deep probing", `tooth ${tooth}: probingMm`);
}

/** Touch hurts at a control and, all of it done, not at the tooth. */
function controlHurts(controls: readonly TestedTooth[], tender: Truth): Fact {
  const hurting = controls.flatMap((control) =>
    touches
      .map((one) => touchOf(control, one))
      .filter(({ is }) => is === "yes")
      .map((one) => ({ ...one, says: `control ${control.tooth}: ${one.says}` })),
  );
  if (hurting.length === 0) return fact(controls.length === 0 ? "unknown" : "no", "no control hurts");
  return joined(tender === "no" ? "yes" : tender === "yes" ? "no" : "unknown", hurting);
}
