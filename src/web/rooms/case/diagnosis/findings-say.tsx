import { useEditedPart } from "../../../parts/fields/editing.tsx";
import { AxisSays } from "./axis-told.tsx";
import { NotTold } from "./not-told.tsx";
import { Codes, Doubts, SourceSays, Urgent } from "./told-parts.tsx";
import "./told.css";
import { useTold } from "./use-told.ts";

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
          <Codes told={told} />
        </>
      )}
    </section>
  );
}
