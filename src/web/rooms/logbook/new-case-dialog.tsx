import { useMutation, useQueryClient } from "@tanstack/react-query";
import { type FormEvent, useId, useState } from "react";
import { useLocation } from "wouter";
import type { BodyOf } from "../../../record/parts.ts";
import { sexWords, treatmentWords } from "../../../record/words/case-words.ts";
import type { CaseView } from "../../../server/api.ts";
import { Button } from "../../parts/button.tsx";
import { today } from "../../parts/days-in-words.ts";
import { Dialog } from "../../parts/dialog.tsx";
import { DayInput } from "../../parts/fields/day-input.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { ask, type Refused } from "../../record/api.ts";
import { caseKey } from "../../record/case-access.tsx";
import "./new-case-dialog.css";
import { ToothEntry } from "./tooth-entry.tsx";

type NewCaseBody = BodyOf<"case">;
const first: NewCaseBody = {
  ...{ pseudonym: "", birthYear: 0, sex: "notRecorded", tooth: "", treatment: "firstTreatment", presentedOn: today() },
  ...{ complaint: "", referredFor: "", background: "", demo: false },
};

/** Asks for what a case can't be without: a pseudonym, a year of birth, a tooth. */
export function NewCaseDialog({ close }: { readonly close: () => void }) {
  const day = useId();
  const [body, setBody] = useState(first);
  const client = useQueryClient();
  const [, go] = useLocation();
  const create = useMutation<CaseView, Refused, NewCaseBody>({
    mutationFn: (about) => ask<CaseView>("/cases", { method: "POST", body: { case: about } }),
    onSuccess: (view) => {
      client.setQueryData(caseKey(view.caseId), view);
      void client.invalidateQueries({ queryKey: ["cases"] });
      go(`/case/${view.caseId}`);
    },
  });
  const change = (part: Partial<NewCaseBody>) => setBody((before) => ({ ...before, ...part }));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    create.mutate(body);
  };
  const ready = body.pseudonym !== "" && body.birthYear > 0 && body.tooth !== "";
  return (
    <Dialog title="New case" close={close}>
      <form className="new-case" onSubmit={submit}>
        <ToothEntry choose={(tooth) => change({ tooth })} />
        <Patient body={body} change={change} />
        <label className="new-case-field">
          <span className="field-label">Treatment</span>
          <select
            className="field-select"
            value={body.treatment}
            onChange={({ target }) => change({ treatment: target.value as NewCaseBody["treatment"] })}
          >
            {Object.entries(treatmentWords).map(([value, words]) => (
              <option key={value} value={value}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <label className="new-case-field" htmlFor={day}>
          <span className="field-label">Presented on</span>
          <DayInput
            id={day}
            value={body.presentedOn}
            onChange={({ target }) => change({ presentedOn: target.value })}
          />
        </label>
        {create.error && <SayRefusal of={create.error} />}
        <footer className="dialog-feet new-case-wide">
          <Button type="submit" weight="strong" disabled={!ready || create.isPending}>
            Begin the case
          </Button>
          <span className="quiet">{ready ? "" : "Tooth, pseudonym and year of birth are needed."}</span>
        </footer>
      </form>
    </Dialog>
  );
}

interface PatientOptions {
  readonly body: NewCaseBody;
  readonly change: (part: Partial<NewCaseBody>) => void;
}

const Patient = ({ body, change }: PatientOptions) => (
  <>
    <label className="new-case-field">
      <span className="field-label">Pseudonym, never a name</span>
      <input
        className="field-line"
        placeholder="P-0417"
        autoComplete="off"
        value={body.pseudonym}
        onChange={({ target }) => change({ pseudonym: target.value.trim() })}
      />
    </label>
    <label className="new-case-field">
      <span className="field-label">Year of birth</span>
      <input
        className="field-line"
        inputMode="numeric"
        autoComplete="off"
        value={body.birthYear === 0 ? "" : body.birthYear}
        onChange={({ target }) => change({ birthYear: Number(target.value.replace(/\D/g, "").slice(0, 4)) })}
      />
    </label>
    <fieldset className="new-case-field new-case-wide">
      <legend className="field-label">Sex</legend>
      <div className="field-choices">
        {Object.entries(sexWords).map(([value, words]) => (
          <label key={value} className="field-choice">
            <input
              type="radio"
              name="sex"
              checked={body.sex === value}
              onChange={() => change({ sex: value as NewCaseBody["sex"] })}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  </>
);
