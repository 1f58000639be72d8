import { Link } from "wouter";
import { partsOf } from "../../../../record/parts.ts";
import { Button } from "../../../parts/button.tsx";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { useEditedPart } from "../../../parts/fields/editing.tsx";
import { useCaseNow } from "../case-now.ts";
import { AxisSays } from "./axis-told.tsx";
import { NotTold } from "./not-told.tsx";
import { Codes, CodesAre, Doubts, SourceSays, Urgent } from "./told-parts.tsx";
import "./told.css";
import { hasTerm, useTold } from "./use-told.ts";

/** What can't wait in these findings, over everything else. */
export function UrgentHere() {
  const { told } = useTold(useEditedPart().id);
  return told === undefined ? null : <Urgent told={told} />;
}

/** What these findings speak for, under them. */
export function FindingsSay() {
  const part = useEditedPart();
  const { entry, told } = useTold(part.id);
  if (part.kind !== "findings") return null;
  return (
    <section className="form-part">
      <h2>What these findings speak for</h2>
      {told === undefined ? (
        <NotTold entry={entry} sheet={part} />
      ) : (
        <>
          <SourceSays told={told} />
          <div className="axes-told">
            <AxisSays told={told} of="pulpal" />
            <AxisSays told={told} of="apical" />
          </div>
          <Doubts told={told} />
          {hasTerm(told) && (
            <>
              <Codes told={told} />
              <CodesAre />
            </>
          )}
        </>
      )}
      <ToDiagnosis takenOn={part.body.takenOn} />
    </section>
  );
}

/** The way to the person's own diagnosis of these findings: to the one that is made, or to a new one. */
function ToDiagnosis({ takenOn }: { readonly takenOn: string }) {
  const { caseId, parts, add } = useCaseNow();
  const made = partsOf(parts, "diagnosis").find(({ body }) => body.madeOn >= takenOn);
  if (made !== undefined)
    return (
      <p>
        <Link href={`/case/${caseId}/${made.id}`}>Your diagnosis of {dayInWords(made.body.madeOn)}</Link>
      </p>
    );
  return (
    add && (
      <p>
        <Button onClick={() => add("diagnosis")}>Make your diagnosis</Button>
      </p>
    )
  );
}
