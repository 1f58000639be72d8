import { useState } from "react";
import { visitPart } from "../../../../../record/parts/visit.ts";
import { Button } from "../../../../parts/button.tsx";
import { useField } from "../../../../parts/fields/editing.tsx";
import { FigureField } from "./figure-field.tsx";

const form = visitPart.body.shape.otherSolventCases.unwrap();

/** What dentist and assistant breathed of it elsewhere on this day; it enters the mean over 8 hours alone, and not the patient's. */
export function OtherCases() {
  const field = useField("otherSolventCases", "Other cases of the day");
  const [ppm, setPpm] = useState<number>();
  const [minutes, setMinutes] = useState<number>();
  const cases = form.safeParse(field.value ?? []).data ?? [];
  const next = form.safeParse([...cases, { ppm, minutes }]).data;
  const write = (value: typeof cases, says: string) => field.write(value.length === 0 ? undefined : value, says, "now");
  const add = () => {
    if (next === undefined) return;
    write(next, `${ppm} ppm over ${minutes} min noted`);
    setPpm(undefined);
    setMinutes(undefined);
  };
  return (
    <section className="form-part" aria-label="Other cases of the day with this solvent">
      <h3>Other cases of the day</h3>
      {cases.length === 0 ? (
        <p className="quiet">None told: the mean over 8 hours holds this visit alone.</p>
      ) : (
        <ul className="air-cases">
          {cases.map((one, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two cases of a day may be alike; their place is their name
            <li key={index}>
              {one.ppm} ppm over {one.minutes} min
              {!field.readOnly && (
                <Button
                  weight="bare"
                  onClick={() =>
                    write(
                      cases.filter((_, at) => at !== index),
                      "one taken out",
                    )
                  }
                >
                  Take out case {index + 1}
                </Button>
              )}
            </li>
          ))}
        </ul>
      )}
      {!field.readOnly && (
        <div className="fields">
          <FigureField label="Mean of another case" unit="ppm" value={ppm} change={setPpm} />
          <FigureField label="It lasted" unit="min" value={minutes} change={setMinutes} />
          <div className="field field-end">
            <Button disabled={next === undefined} onClick={add}>
              Note the other case
            </Button>
          </div>
        </div>
      )}
    </section>
  );
}
