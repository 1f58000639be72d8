import { apicalWords, painSourceWords, pulpalWords } from "../../../../record/words/case-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { AxisSays } from "../diagnosis/axis-told.tsx";
import { BesideFindings } from "../diagnosis/beside-findings.tsx";
import { CodesBeside } from "../diagnosis/codes-beside.tsx";
import "../diagnosis/diagnosis-page.css";
import { Differs } from "../diagnosis/differs.tsx";
import { OwnTerm } from "../diagnosis/own-term.tsx";
import { Doubts, SourceSays, Urgent } from "../diagnosis/told-parts.tsx";
import "../diagnosis/told.css";
import { useOwnDiagnosis } from "../diagnosis/use-own-diagnosis.ts";

const also = { condensingOsteitis: "condensing osteitis" } as const;

/** The clinician's own diagnosis with its reason, beside what the findings speak for. */
export function DiagnosisForm() {
  const own = useOwnDiagnosis();
  const { told } = own;
  return (
    <>
      <div className="fields">
        <DayField at="madeOn" label="Made on" />
      </div>
      {told && <Urgent told={told} />}
      <BesideFindings own={own} />
      {told && <SourceSays told={told} />}
      <div className="diagnosis-axis" data-told={told !== undefined}>
        {told && <AxisSays told={told} of="pulpal" />}
        <OwnTerm own={own} at="pulpal" label="Pulpal diagnosis" words={pulpalWords} />
      </div>
      <div className="diagnosis-axis" data-told={told !== undefined}>
        {told && <AxisSays told={told} of="apical" />}
        <div className="own-apical">
          <OwnTerm own={own} at="apical" label="Apical diagnosis" words={apicalWords} />
          <SelectField at="apicalAlso" label="Beside it" words={also} unset="nothing else" />
        </div>
      </div>
      <div className="fields">
        <SelectField at="source" label="The complaint comes from" words={painSourceWords} unset="not said" />
        <TextField at="because" label="Because" prose />
      </div>
      <Differs own={own} />
      {told && <Doubts told={told} />}
      <CodesBeside own={own} />
      <p className="quiet">
        Terms of the consensus of 2009 (AAE and ABE). What the findings speak for supports a diagnosis and is none: the
        person who examines makes it.
      </p>
    </>
  );
}
