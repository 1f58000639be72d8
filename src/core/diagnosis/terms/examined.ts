import type { DiagnosisInput, TestedTooth } from "./diagnosis-input.ts";

/** The sheet of tests parted into the tooth in question and its controls, in the order of their numbers. */
export interface Examined {
  readonly input: DiagnosisInput;
  readonly tooth: TestedTooth;
  readonly controls: readonly TestedTooth[];
}

/** One sensibility test that was done on a tooth. */
export interface Sensibility {
  readonly test: "cold" | "heat" | "electric";
  readonly replies: boolean;
  readonly heightened: boolean;
  /** As `cold: no reply`. */
  readonly says: string;
  readonly at: string;
}

const replyWords = { none: "no reply", normal: "normal reply", heightened: "heightened reply" } as const;

/**
 * The sensibility tests that were done on a tooth, with what each gave; empty where none was.
 * @source docs/methods/diagnosis, C3
 */
export function sensibilityOf({ tooth, cold, heat, electric }: TestedTooth): Sensibility[] {
  const thermal = (["cold", "heat"] as const).flatMap((test): Sensibility[] => {
    const { reply, lingersSeconds } = test === "cold" ? cold : heat;
    if (reply === "notDone") return [];
    const lasts = lingersSeconds === undefined ? "" : ` that outlasts it by ${lingersSeconds} s`;
    const says = `${test}: ${replyWords[reply]}${lasts}`;
    return [
      { test, replies: reply !== "none", heightened: reply === "heightened", says, at: `tooth ${tooth}: ${test}` },
    ];
  });
  if (electric === "notDone") return thermal;
  const says = electric === "none" ? "electric: no reply" : `electric: reply at ${electric}`;
  const at = `tooth ${tooth}: electric`;
  return [...thermal, { test: "electric", replies: electric !== "none", heightened: false, says, at }];
}
