import type { ReactNode } from "react";
import { helpWords } from "../../../../record/words/visit-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { AirSection } from "./air/air-section.tsx";
import { BeforeWork } from "./before-work.tsx";
import { Bench } from "./bench/bench.tsx";
import { FilmsTaken } from "./bench/films-taken.tsx";
import { VisitBench } from "./bench/visit-bench.tsx";
import { CanalTables } from "./canal-tables.tsx";
import { Closing } from "./closing.tsx";
import { Materials } from "./materials/materials.tsx";
import { ToldAndAfter } from "./told-and-after.tsx";

/** One visit: what is in reach at the chair, then the tooth, what was checked, measured, used, closed with and told. */
export const VisitForm = ({ picture }: { readonly picture: ReactNode }) => (
  <Bench>
    <VisitBench />
    {picture}
    <div className="visit-chair form-part">
      <div className="fields">
        <TextField at="aim" label="Aim" prose />
        <DayField at="on" label="On" />
        <NumberField at="minutes" label="Time at the chair" unit="min" />
        <SelectField at="help" label="The resident" words={helpWords} unset="not recorded" />
      </div>
      <BeforeWork />
      <CanalTables />
    </div>
    <Materials />
    <AirSection />
    <div className="visit-chair form-part">
      <FilmsTaken />
      <Closing />
      <ToldAndAfter />
    </div>
  </Bench>
);
