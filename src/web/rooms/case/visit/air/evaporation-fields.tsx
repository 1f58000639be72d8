import { useState } from "react";
import { clinicRules } from "../../../../../record/clinic-rules.ts";
import { useField } from "../../../../parts/fields/editing.tsx";
import { FigureField } from "./figure-field.tsx";
import { useVisitInAir } from "./use-visit-in-air.ts";

interface Ends {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

const form = clinicRules.shape.evaporationPerMin.unwrap();

/** How fast a dose evaporates, where somebody knows; kept once both ends are told, or none. */
export function EvaporationFields() {
  const { clinic, readOnly } = useVisitInAir();
  const field = useField("clinic.evaporationPerMin", "Rate of evaporation");
  const [draft, setDraft] = useState<Ends>();
  const { low, high } = draft ?? clinic.evaporationPerMin ?? {};
  const change = (next: Ends) => {
    const isEmpty = next.low === undefined && next.high === undefined;
    const whole = form.safeParse(next).data;
    if (isEmpty) field.write(undefined, "emptied", "typing");
    else if (whole !== undefined) field.write(whole, `${whole.low} to ${whole.high} a minute`, "typing");
    setDraft(isEmpty || whole !== undefined ? undefined : next);
  };
  return (
    <div className="form-part">
      <p className="quiet">
        The share of a dose that goes into the air in a minute, of what is left. It is not published for a pulp chamber:
        where it stays empty 0.0318 to 2 is taken, the lower end of watery spills, the upper an assumption.
      </p>
      <div className="fields">
        <FigureField
          label="At least"
          unit="per min"
          value={low}
          readOnly={readOnly}
          change={(next) => change({ low: next, high })}
        />
        <FigureField
          label="At most"
          unit="per min"
          value={high}
          readOnly={readOnly}
          change={(next) => change({ low, high: next })}
        />
      </div>
      {draft !== undefined && (
        <p className="look" role="status">
          ◆ Not kept yet: both ends are needed, above 0.
        </p>
      )}
    </div>
  );
}
